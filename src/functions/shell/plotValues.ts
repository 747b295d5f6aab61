import { BadRows } from "./badRows";
import { column, filledRows, numberAt } from "./columns";
import { blank } from "./readings";

/**
 * What each plot says, as a list of numbers. A blank between others counts as 0, a plot without trees, since hosts
 * disagree on how a blank arrives; blanks after the last number are cut off, so that a whole column may be given.
 *
 * @throws InvalidInput naming the first bad row and how many more there are
 */
export function plotValues(given: unknown): Float64Array {
  const list = column(given, "Value");
  const values = new Float64Array(filledRows(list, blank));
  const bad = new BadRows();
  const bounds = { unit: "" };
  for (let row = 0; row < values.length; row += 1) {
    bad.guard(row, () => {
      values[row] = numberAt(list, row, bounds, 0);
    });
  }
  bad.settle();
  return values;
}
