import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { bestFrom, logsOf } from "./bestFrom";
import { requireBuckOrder, type BuckOrder } from "./buckOrder";
import type { BuckedLog } from "./logsFrom";
import { soundStretches } from "./soundStretches";

/**
 * The best-paying way to cut a stem into logs, by dynamic programming.
 *
 *     best(p) = greatest of 0 and, over every product and length L that fits, value(p, L) + best(p + L + trim)
 *
 *     p  height of a cut, from the stump up, and again from the top of each flaw    [ft]
 *
 * Cuts may fall anywhere: heights are sums of lengths and trims as they are, on no grid that would round them. Logs are
 * cut one upon the other from the bottom of each sound stretch. That loses nothing: stems taper, so a log that is moved
 * down has no less of a small end and no less wood. The small end is measured where the log is cut off, above its trim.
 * Width of the cuts is left out.
 *
 * @returns the logs from the stump up
 * @throws InvalidInput when a measure cannot be used
 * @throws OutOfRange when no product fits anywhere
 */
export function buckPlan(order: BuckOrder): readonly BuckedLog[] {
  requireBuckOrder(order);
  const { stem, stump, flaws = [] } = order;
  const logs = soundStretches(stump, stem.height, flaws).flatMap(([from, to]) => logsOf(bestFrom(order, to)(from)));
  if (logs.length === 0) {
    const unpriced = order.products.length > 0 && order.products.every(({ price }) => price === 0);
    throw new OutOfRange(unpriced ? "No product in your list has a price." : "No product in your list fits this stem.");
  }
  return logs;
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "The best-paying way to cut a stem",
    where: "dynamic programming over cuts; small end measured above the trim, width of cuts left out",
    standing: "choice of ours",
  },
];
