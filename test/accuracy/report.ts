import { logComparisons } from "./log";
import { lumberComparisons } from "./lumber";
import { treeComparisons } from "./tree";
import { cruiseComparisons } from "./cruise";
import { sawingComparisons } from "./sawing";
import { stemComparisons } from "./stem";
import type { Comparison } from "./comparison";

/** Prints, for each rule and table, how many published values were compared and how far off ours are. */
const comparisons: readonly Comparison[] = [
  ...logComparisons(),
  ...lumberComparisons(),
  ...treeComparisons(),
  ...stemComparisons(),
  ...cruiseComparisons(),
  ...sawingComparisons(),
];

const figure = (value: number) => Number(value.toPrecision(3)).toString();

console.log("| Rule or table | Source | Standing | n | Printed to | Within half a step | Mean difference | Largest difference |");
console.log("| --- | --- | --- | ---: | ---: | ---: | ---: | ---: |");
for (const { subject, source, standing, unit, printedTo, pairs } of comparisons) {
  const differences = pairs.map(({ printed, ours }) => ours - printed);
  const within = differences.filter((difference) => Math.abs(difference) <= printedTo / 2 + 1e-9).length;
  const mean = differences.reduce((sum, difference) => sum + difference, 0) / differences.length;
  const largest = differences.reduce((worst, difference) => (Math.abs(difference) > Math.abs(worst) ? difference : worst), 0);
  console.log(
    `| ${subject} | ${source} | ${standing} | ${pairs.length} | ${printedTo} ${unit} | ${within} | ${figure(mean)} | ${figure(largest)} |`,
  );
}
