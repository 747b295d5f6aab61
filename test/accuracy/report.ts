import { logComparisons } from "./log";
import { lumberComparisons } from "./lumber";
import { treeComparisons } from "./tree";
import { cruiseComparisons } from "./cruise";
import { localTableComparisons } from "./localTable";
import { sawingComparisons } from "./sawing";
import { stemComparisons } from "./stem";
import type { Comparison } from "./comparison";

/** For each rule and table: how many published values were compared, and how far off ours are. */
export function accuracyTable(): string {
  const comparisons: readonly Comparison[] = [
    ...logComparisons(),
    ...lumberComparisons(),
    ...treeComparisons(),
    ...stemComparisons(),
    ...localTableComparisons(),
    ...cruiseComparisons(),
    ...sawingComparisons(),
  ];
  return [
    "| Rule or table | Source | Standing | n | Printed to | Within half a step | Mean difference | Largest difference |",
    "| --- | --- | --- | ---: | ---: | ---: | ---: | ---: |",
    ...comparisons.map(line),
  ].join("\n");
}

/** Rounding noise of the machine is not a difference. */
const NOISE = 1e-12;

const figure = (value: number) => (Math.abs(value) < NOISE ? "0" : Number(value.toPrecision(3)).toString());

function line({ subject, source, standing, unit, printedTo, pairs }: Comparison): string {
  const differences = pairs.map(({ printed, ours }) => ours - printed);
  const within = differences.filter((difference) => Math.abs(difference) <= printedTo / 2 + 1e-9).length;
  const mean = differences.reduce((sum, difference) => sum + difference, 0) / differences.length;
  const largest = differences.reduce((worst, one) => (Math.abs(one) > Math.abs(worst) ? one : worst), 0);
  const step = `${printedTo} ${unit}`.trim();
  return `| ${subject} | ${source} | ${standing} | ${pairs.length} | ${step} | ${within} | ${figure(mean)} | ${figure(largest)} |`;
}
