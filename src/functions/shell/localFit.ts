import { chosen, textOf } from "../../core/basis/choices";
import { InvalidInput, OutOfRange } from "../../core/basis/problem";
import { localForms } from "../../core/tree/local";
import { combinedVariable } from "../../core/tree/local/combinedVariable";
import type { FittedTable, LocalTable, Range } from "../../core/tree/local/fitLocalTable";
import type { FelledTree, LocalForm } from "../../core/tree/local/localForm";
import { localVolume, reachOf } from "../../core/tree/local/localVolume";
import { BadRows, column, isNothing, numberAt, sharedRows } from "./columns";
import { boundsIn, chosenOr } from "./measuredIn";
import { blank, boundedNumber, oneNumber, type Cells } from "./readings";
import type { UnitSystem } from "./unitSystem";

export const localForm = (given: unknown): LocalForm => chosenOr("Form", given, localForms, combinedVariable);

interface FelledColumns {
  readonly dbh: unknown;
  readonly height: unknown;
  readonly volume: unknown;
}

/** The felled trees, in the user's own units; a row without all three measures is passed over. */
export function felledTrees(given: FelledColumns, { diameter, distance }: UnitSystem): readonly FelledTree[] {
  const [dbh, height, volume] = [
    column(given.dbh, "DBH"),
    column(given.height, "Height"),
    column(given.volume, "Volume"),
  ];
  const [thick, tall] = [boundsIn(diameter, 1, 80), boundsIn(distance, 1, 400)];
  const bad = new BadRows("Tree");
  const trees: FelledTree[] = [];
  for (let row = 0, rows = sharedRows([dbh, height, volume]); row < rows; row += 1) {
    if ([dbh, height, volume].some((list) => isNothing(list.at(row)))) continue;
    bad.guard(row, () => {
      trees.push({
        dbh: numberAt(dbh, row, thick, 0),
        height: numberAt(height, row, tall, 0),
        volume: numberAt(volume, row, { unit: "", low: 1e-6, high: 1e6 }, 0),
      });
    });
  }
  bad.settle();
  return trees;
}

/** What a row of the answer is called; the sizes carry their unit, so that a table is not read in another one. */
const labels = {
  form: "Form",
  a: "a",
  b: "b",
  c: "c",
  leastDbh: "Smallest DBH",
  mostDbh: "Largest DBH",
  leastHeight: "Smallest height",
  mostHeight: "Largest height",
} as const;

export function fitRows(fit: FittedTable, { diameter, distance }: UnitSystem): readonly (readonly unknown[])[] {
  const { a, b, c = "" } = fit.coefficients;
  return [
    [labels.form, fit.form.title],
    ["Equation", fit.form.equation],
    [labels.a, a],
    [labels.b, b],
    [labels.c, c],
    ["Felled trees", fit.trees],
    ["Mean volume", fit.meanVolume],
    ["Standard error of estimate", fit.standardError],
    ["Standard error pct of mean", (100 * fit.standardError) / fit.meanVolume],
    ["R squared", fit.rSquared],
    ["Furnival index", fit.furnivalIndex],
    ["Correction for logarithms", fit.correction],
    [`${labels.leastDbh} ${diameter.name}`, fit.dbh.least],
    [`${labels.mostDbh} ${diameter.name}`, fit.dbh.most],
    [`${labels.leastHeight} ${distance.name}`, fit.height.least],
    [`${labels.mostHeight} ${distance.name}`, fit.height.most],
  ];
}

/**
 * Reads a fitted table back from the cells that LOCALFIT filled.
 *
 * @throws OutOfRange while there is no fit; InvalidInput when the cells are something else, or in another unit
 */
export function localTableIn(cells: Cells, { diameter, distance }: UnitSystem): LocalTable {
  const found = new Map(cells.map((row) => [textOf(row[0]).toLowerCase(), row[1] as unknown]));
  const cell = (label: string) => {
    const value = found.get(label.toLowerCase());
    if (!blank(value)) return value;
    if (cells.some((row) => textOf(row[0]) === "No trees yet") || cells.every((row) => blank(row[0])))
      throw new OutOfRange("The local table has no felled trees yet.");
    throw new InvalidInput(
      `Fit should be the answer of LOCALFIT, both of its columns, in these units. It has no "${label}".`,
    );
  };
  const number = (label: string) => boundedNumber(cell(label), label, { unit: "" });
  const range = (least: string, most: string): Range => ({ least: number(least), most: number(most) });
  const form = chosen("Form", cell(labels.form), localForms);
  const c = found.get(labels.c);
  return {
    form,
    coefficients: { a: number(labels.a), b: number(labels.b), ...(!blank(c) && { c: number(labels.c) }) },
    dbh: range(`${labels.leastDbh} ${diameter.name}`, `${labels.mostDbh} ${diameter.name}`),
    height: range(`${labels.leastHeight} ${distance.name}`, `${labels.mostHeight} ${distance.name}`),
  };
}

/** Most lines and columns of a table to read from, so that a slip of the step is told: a choice of ours. */
const MOST_STEPS = 60;

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
