import { mersenne } from "pure-rand/generator/mersenne";
import { percent } from "../../src/core/basis/units";
import { estimate } from "../../src/core/cruise/estimate";
import { understatements } from "../../src/core/cruise/stoppingRule";
import { pointsOf, truth } from "./mappedStand";

/**
 * What becomes of the margin when a cruiser stops as soon as it looks good enough, on the stand of mappedStand.ts. The
 * pane says these figures: they stand in src/core/cruise/stoppingRule.ts, and the last line tells whether they still do.
 * Run by: npx tsx test/bench/stopping.ts
 */

const CONFIDENCE = percent(95);
const CRUISES = 4000;
const FIRST = 5;
const MOST = 160;

const shown = (value: number, digits = 1) => value.toFixed(digits);
const marginAfter = (points: Float64Array, used: number) =>
  estimate(points.subarray(0, used), CONFIDENCE).marginPercent ?? Infinity;

console.log("Stopping as soon as the margin looks good, against the same number of points planned beforehand.");
console.log(`${CRUISES} cruises each, ${CONFIDENCE} % confidence; at least ${FIRST} points, at most ${MOST}.`);
console.log(
  "| Wanted % | Points | Planned or stopped | Stated margin % | True margin % | Understated by % | Holds the truth % |",
);
console.log("| ---: | ---: | --- | ---: | ---: | ---: | ---: |");
const found = understatements.map(({ wanted }) => {
  const chance = mersenne(wanted);
  const cruises = Array.from({ length: CRUISES }, () => pointsOf(chance, MOST, true));
  const stops = cruises.map((points) => {
    let used = FIRST;
    while (used < MOST && marginAfter(points, used) > wanted) used += 1;
    return used;
  });
  const average = Math.round(stops.reduce((sum, used) => sum + used, 0) / CRUISES);
  const [stopped] = (
    [
      ["stopped", stops],
      ["planned", stops.map(() => average)],
    ] as const
  ).map(([how, used]) => {
    const estimates = cruises.map((points, at) => estimate(points.subarray(0, used[at]), CONFIDENCE));
    const errors = estimates.map(({ value }) => Math.abs(value / truth - 1) * 100).sort((one, other) => one - other);
    // The margin that would have held as many cruises as the confidence says
    const real = errors[Math.floor((CONFIDENCE / 100) * CRUISES)] ?? NaN;
    const stated = estimates.reduce((sum, { marginPercent = 0 }) => sum + marginPercent, 0) / CRUISES;
    const held = estimates.filter(({ low, high }) => low <= truth && truth <= high).length;
    const understated = 100 * (1 - stated / real);
    console.log(
      `| ${wanted} | ${average} | ${how} | ${shown(stated)} | ${shown(real)} | ${shown(understated, 0)} | ${shown((100 * held) / CRUISES)} |`,
    );
    return understated;
  });
  return { wanted, percent: Math.round(stopped ?? NaN) };
});
const same = JSON.stringify(found) === JSON.stringify(understatements);
console.log(
  same
    ? "\nThe pane says these figures."
    : `\nThe pane says other figures: put ${JSON.stringify(found)} into src/core/cruise/stoppingRule.ts.`,
);
