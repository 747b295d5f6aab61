import { shown } from "../basis/require";
import { sum, type Step } from "../basis/step";
import { bestFrom, type Best } from "./bestFrom";
import type { BuckOrder } from "./buckOrder";
import { buckPlan } from "./buckPlan";
import { logsFrom, stemLogOf, type BuckedLog } from "./logsFrom";
import { soundStretches } from "./soundStretches";

/** Logs of one product that differ by less are the same log. [ft] */
const SAME_LENGTH = 1e-6;

/**
 * The way to the best plan of a stem. For each sound stretch of it, from the bottom up: where its logs are cut, how each
 * of them is measured and what it brings, and why it was chosen: what it brings together with the best above it, beside
 * the same of the next best log that could have been cut there. The last step is what the plan brings.
 *
 * @throws InvalidInput and OutOfRange as buckPlan does
 */
export function buckPlanWorking(order: BuckOrder): readonly Step[] {
  const logs = buckPlan(order); // throws where there is no plan, and so no way to it
  const { stem, stump, flaws = [] } = order;
  let cut = 0;
  const steps = soundStretches(stump, stem.height, flaws).flatMap(([from, to]) => {
    const best = bestFrom(order, to);
    const found: Step[] = [
      {
        sum: sum`${to} - ${from}`,
        meaning: `Sound stem from ${shown(from)} to ${shown(to)} ft above the ground: its length`,
        value: to - from,
        unit: "ft",
      },
    ];
    if (!best(from).log) found.push(nothingFits);
    for (let at: Best | undefined = best(from); at?.log; at = at.above) {
      cut += 1;
      found.push(...logSteps(order, at.log, at.above ?? { value: 0 }, cut), ...nextBest(order, at.log, to, best));
    }
    return found;
  });
  return [...steps, together(logs)];
}

const nothingFits: Step = { sum: "no log", meaning: "No product fits here, or none that pays", value: 0, unit: "$" };

function logSteps(order: BuckOrder, log: BuckedLog, above: Best, number: number): readonly Step[] {
  const { from, to, product, length, smallEnd, volume, value } = log;
  const { measure, price } = product;
  const steps: readonly Step[] = [
    {
      sum: sum`${from} + ${length} + ${order.trim}`,
      meaning: `Where it is cut off: from its bottom, its length and its trim`,
      value: to,
      unit: "ft",
    },
    {
      sum: `at ${shown(to)} ft`,
      meaning: "Small end inside bark there, by the curve of the stem",
      value: smallEnd,
      unit: "in",
    },
    ...measure.working(stemLogOf(order.stem, from, length, smallEnd)),
    { sum: sum`${volume} / ${measure.perPrice} * ${price}`, meaning: "At its price", value, unit: "$" },
    {
      sum: sum`${value} + ${above.value}`,
      meaning: "With the best that can be cut above it",
      value: value + above.value,
      unit: "$",
    },
  ];
  return steps.map((step) => ({ ...step, meaning: `Log ${number}, ${product.name}: ${lowered(step.meaning)}` }));
}

/** What was turned down for a log: the best of the others that could have been cut from the same bottom. */
function nextBest(order: BuckOrder, chosen: BuckedLog, top: number, best: (cut: number) => Best): readonly Step[] {
  const others = [...logsFrom(order, chosen.from, top)].filter(
    ({ product, length }) => product !== chosen.product || Math.abs(length - chosen.length) > SAME_LENGTH,
  );
  const worth = (log: BuckedLog) => log.value + best(log.to).value;
  const [first, ...rest] = others;
  if (!first) return [];
  const next = rest.reduce((most, log) => (worth(log) > worth(most) ? log : most), first);
  return [
    {
      sum: sum`${next.value} + ${best(next.to).value}`,
      meaning: `Next best of the ${others.length + 1} logs that fit there: ${shown(next.length)} ft as ${next.product.name}, with the best above it`,
      value: worth(next),
      unit: "$",
    },
  ];
}

/** Behind a colon. */
const lowered = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);

const together = (logs: readonly BuckedLog[]): Step => ({
  sum: logs.map(({ value }) => shown(value)).join(" + "),
  meaning: "All logs together: what the plan brings",
  value: logs.reduce((total, { value }) => total + value, 0),
  unit: "$",
});
