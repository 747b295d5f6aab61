import { chooseLogs } from "../../src/core/sawing/wanted/chooseLogs";
import { cutListOrder, newProgram, yardOf } from "../support/cutLists";

const LOGS = 200;

/** The largest cut list that is asked for: how long it takes, how near the best it comes, and what a greedy choice does. */
export function cutListLines(): readonly string[] {
  const order = cutListOrder(yardOf(LOGS, 12_345), 1, 12_345);
  const started = performance.now();
  const search = chooseLogs(order, newProgram);
  let first = NaN;
  let near = NaN;
  let greedy = NaN;
  const seconds = () => (performance.now() - started) / 1000;
  for (;;) {
    const step = search.next();
    if (step.done) {
      const { gap, wood, taken } = step.value;
      if (Number.isNaN(near) && gap <= 2) near = seconds();
      return [
        `| ${LOGS} logs, 30 lines: first progress | ${first.toFixed(2)} s | 1 s |`,
        `| within 2 % of the best | ${near.toFixed(1)} s | 30 s |`,
        `| at the end: ${taken.length} logs, ${wood.toFixed(0)} ft3 | ${seconds().toFixed(1)} s, gap ${gap.toFixed(2)} % | 2 % |`,
        `| one log after another instead (gap to the first bound) | ${greedy.toFixed(1)} % | |`,
      ];
    }
    const { best, round } = step.value;
    if (Number.isNaN(first)) first = seconds();
    if (Number.isNaN(greedy) && round === 2) greedy = best.gap;
    if (Number.isNaN(near) && best.gap <= 2 && best.missing.every((count) => count === 0)) near = seconds();
  }
}
