import { InvalidInput, OutOfRange } from "../../core/basis/problem";
import type { LocalTable, Range } from "../../core/tree/local/fitLocalTable";
import { localVolume, reachOf } from "../../core/tree/local/localVolume";
import { oneNumber } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** Most lines and columns of a table to read from, so that a slip of the step is told: a choice of ours. */
const MOST_STEPS = 60;

/** A table to read from: its heading, and a row for each diameter. */
export function tableOfVolumes(
  table: LocalTable,
  steps: { readonly dbh_step: unknown; readonly height_step: unknown },
  { diameter, distance, metric }: UnitSystem,
) {
  const [dbhStep, heightStep] = metric ? [5, 3] : [2, 10];
  const bounds = (unit: string) => ({ unit, low: 0.1, high: 100 });
  const diameters = stepsOver(table.dbh, oneNumber(steps.dbh_step, "DBH step", bounds(diameter.name), dbhStep), "DBH");
  const heights = stepsOver(
    table.height,
    oneNumber(steps.height_step, "Height step", bounds(distance.name), heightStep),
    "height",
  );
  return {
    header: [`DBH ${diameter.name}`, ...heights.map((height) => `${height} ${distance.name}`)],
    rows: diameters.map((dbh) => [dbh, ...heights.map((height) => volumeOrBlank(table, dbh, height))]),
  };
}

/** Whole steps within the reach of the table. */
function stepsOver(felled: Range, step: number, what: string): readonly number[] {
  const { least, most } = reachOf(felled);
  const [first, last] = [Math.ceil(least / step), Math.floor(most / step)];
  if (last < first)
    throw new InvalidInput(`The ${what} step should be smaller: no whole step falls among the felled trees.`);
  if (last - first >= MOST_STEPS)
    throw new InvalidInput(`The ${what} step should be larger: this one makes ${last - first + 1} lines.`);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

function volumeOrBlank(table: LocalTable, dbh: number, height: number): number | "" {
  try {
    return localVolume(table, dbh, height);
  } catch (problem) {
    if (problem instanceof OutOfRange) return "";
    throw problem;
  }
}
