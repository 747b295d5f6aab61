import { chosen, textOf } from "../../core/basis/choices";
import { InvalidInput, OutOfRange } from "../../core/basis/problem";
import { localForms } from "../../core/tree/local";
import { fitLabels as labels } from "../../core/tree/local/fitLabels";
import type { FittedTable, LocalTable, Range } from "../../core/tree/local/fitLocalTable";
import { blank, boundedNumber, type Cells } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** A fitted table as cells hold it; the sizes carry their unit, so that a table is not read in another one. */
export function fitRows(fit: FittedTable, { diameter, distance }: UnitSystem): readonly (readonly unknown[])[] {
  const { a, b, c = "" } = fit.coefficients;
  return [
    [labels.form, fit.form.title],
    [labels.equation, fit.form.equation],
    [labels.a, a],
    [labels.b, b],
    [labels.c, c],
    [labels.trees, fit.trees],
    [labels.meanVolume, fit.meanVolume],
    [labels.error, fit.standardError],
    [labels.errorPercent, (100 * fit.standardError) / fit.meanVolume],
    [labels.rSquared, fit.rSquared],
    [labels.furnivalIndex, fit.furnivalIndex],
    [labels.correction, fit.correction],
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
