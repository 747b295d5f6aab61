import { feet } from "../../../../src/core/basis/units";
import { cumulativeShare } from "../../../../src/core/tree/national/taper";
import { tableNames, type TableName } from "../../../support/national/packedTables";
import { numberIn, type PublishedRow } from "../../../support/published";
import { COEFFICIENTS } from "./nationalTables";
import { examples, ourQuantities, rowsOf, type Quantities, type RowOf } from "./workedExamples";

/** The height of a top that the same example prints; 0 where it prints none. */
function printedHeight(row: PublishedRow, name: RegExp): number {
  const printed = examples.rows.find(({ example, quantity = "" }) => example === row.example && name.test(quantity));
  return printed ? numberIn(printed, "value") : 0;
}

/** The quantities of an example, those that rest on the height of a top from the height that the example prints. */
export function fromPrintedHeights(row: PublishedRow, moved: RowOf = rowsOf(row)): Quantities {
  const all = ourQuantities(row, moved);
  const { alpha = NaN, beta = NaN } = moved("insideRatio");
  const shareBelow = (h: number) => cumulativeShare(feet(h), feet(numberIn(row, "height")), { alpha, beta });
  const [Rm, Rs] = [/^h_to_4in/, /^h_to_[79]in/].map((name) => shareBelow(printedHeight(row, name))) as [
    number,
    number,
  ];
  const { R1 = NaN, Vtotib = NaN, Vtotob = NaN } = all;
  return {
    ...all,
    Rm,
    Rs,
    Vmerib: (Rm - R1) * Vtotib,
    Vmerob: (Rm - R1) * Vtotob,
    Vsawib: (Rs - R1) * Vtotib,
    Vsawob: (Rs - R1) * Vtotob,
    ...(row.example === "1" && { Vtopib: (1 - Rm) * Vtotib }),
  };
}

/** The step to which the tables print a coefficient: nine decimals, but three digits where it is as small as 3.19E-5. */
const printedStep = (table: TableName, name: string, value: number) =>
  table === "barkVolume" && name === "a" && value === 3.19e-5 ? 1e-7 : 1e-9;

/**
 * How far a quantity of an example may be off only because the tables print fewer digits than the report worked with:
 * half the printed step of every coefficient that goes into it, all of them pulling the same way.
 */
export function leewayOf(row: PublishedRow): number {
  const rowOf = rowsOf(row);
  const quantity = row.quantity ?? "";
  let leeway = 0;
  for (const table of tableNames) {
    for (const name of COEFFICIENTS) {
      const value = rowOf(table)[name];
      if (value === undefined) continue;
      const half = printedStep(table, name, value) / 2;
      const [low = NaN, high = NaN] = [-half, half].map((by) => {
        const moved: RowOf = (one) => (one === table ? { ...rowOf(one), [name]: value + by } : rowOf(one));
        return fromPrintedHeights(row, moved)[quantity];
      });
      leeway += Math.abs(high - low) / 2;
    }
  }
  return leeway;
}

/** Half the last digit that the example prints of a quantity. */
export const halfPrinted = (row: PublishedRow) => 0.5 * 10 ** -(row.value?.split(".")[1]?.length ?? 0);
