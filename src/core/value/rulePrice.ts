import { OutOfRange } from "../basis/problem";
import { requireNotNegative } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { dollarsPerMbf, type DollarsPerMbf } from "../basis/units";
import { grossScale } from "../log/grossScale";
import type { LogRule, ScaledLog } from "../log/logRule";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "The same money by another rule",
    where: "log by log, from what each rule gives for it as its tables are rounded; never one factor for all logs",
    standing: "choice of ours",
  },
];

/**
 * Price by another rule that brings the same money for a log.
 *
 *     p2 = p1 V1 / V2
 *
 *     p1, p2  prices by the two rules                        [$/MBF]
 *     V1, V2  the log by the two rules, as tables round them [bf]
 *
 * It holds for that log alone: rules part company with size, so there is no one factor between them.
 *
 * @throws InvalidInput when the price is below 0 or a measure is not above 0
 * @throws OutOfRange where a rule has no value, or nothing is scaled by the rule wanted
 */
export function rulePrice(price: DollarsPerMbf, log: ScaledLog, from: LogRule, to: LogRule): DollarsPerMbf {
  requireNotNegative("Price", price, "$ per MBF");
  const paidFor = grossScale(from, log);
  const wanted = grossScale(to, log);
  if (wanted === 0) {
    throw new OutOfRange((telling) => {
      const size = `${told(telling, log.diameter, "in")} x ${told(telling, log.length, "ft")}`;
      return `By ${to.title} a log of ${size} scales 0 bf, so no price by it brings the same money.`;
    });
  }
  return dollarsPerMbf((price * paidFor) / wanted);
}
