import { mersenne } from "pure-rand/generator/mersenne";
import { percent } from "../../src/core/basis/units";
import { estimate } from "../../src/core/cruise/estimate";
import { ACRES, BAF, pointsOf, stand, truth } from "./mappedStand";

/**
 * How often the stated interval holds the truth, on an invented stand whose every tree is mapped.
 * Run by: npx tsx test/bench/coverage.ts
 */

const CONFIDENCE = percent(95);
const CRUISES = 4000;

const shown = (value: number, digits = 1) => value.toFixed(digits);

console.log(`Invented stand: ${stand.length} trees on ${ACRES} acres, ${shown(truth, 2)} ft2/ac; seed 1871.`);
console.log(`Points at BAF ${BAF}, ${CRUISES} cruises each, ${CONFIDENCE} % confidence.\n`);
console.log(
  "| Points | Walkthrough | Interval holds the truth % | Mean of the means, % of the truth | Mean margin % |",
);
console.log("| ---: | --- | ---: | ---: | ---: |");
for (const walkthrough of [true, false]) {
  for (const points of [5, 10, 20, 40]) {
    const chance = mersenne(points + (walkthrough ? 0 : 1000));
    let [held, sum, margins] = [0, 0, 0];
    for (let cruise = 0; cruise < CRUISES; cruise += 1) {
      const { value, low, high, marginPercent = 0 } = estimate(pointsOf(chance, points, walkthrough), CONFIDENCE);
      if (low <= truth && truth <= high) held += 1;
      sum += value;
      margins += marginPercent;
    }
    console.log(
      `| ${points} | ${walkthrough ? "yes" : "no"} | ${shown((100 * held) / CRUISES)} | ${shown((100 * sum) / CRUISES / truth, 2)} | ${shown(margins / CRUISES)} |`,
    );
  }
}
