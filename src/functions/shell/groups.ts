import { NameList } from "../../core/cruise/nameList";
import { BadRows } from "./badRows";
import { column, filledRows, isNothing, numberAt, sharedRows } from "./columns";
import { blank } from "./readings";

/** What plots say, put together by the name beside each of them. */
export interface Groups {
  readonly names: readonly string[];
  /** values[group], the plots of each group in the order given; a plot without trees says 0. */
  readonly values: readonly (readonly number[])[];
}

/**
 * Reads plots and the name of the stratum or the group that each belongs to. A blank value beside a name is a plot
 * without trees.
 *
 * @param known the only names there may be, each kept even when it has no plot. Left out: whatever names come
 * @throws InvalidInput naming the first bad row and how many more there are
 */
export function groupedValues(names: unknown, values: unknown, what: string, known?: readonly string[]): Groups {
  const name = column(names, what);
  const value = column(values, "Value");
  const named = name.single ? 0 : filledRows(name);
  const rows = Math.min(sharedRows([name, value]), Math.max(named, filledRows(value, blank)));
  const list = new NameList(known);
  const groups: number[][] = list.names.map(() => []);
  const bad = new BadRows();
  for (let row = 0; row < rows; row += 1) {
    const cell = name.at(row);
    if (isNothing(cell)) {
      if (!isNothing(value.at(row))) bad.add(row, `the ${what.toLowerCase()} is missing.`);
      continue;
    }
    const place = known ? list.placeOf(String(cell)) : list.add(String(cell));
    if (place === undefined) {
      bad.add(row, `${what.toLowerCase()} "${String(cell).slice(0, 60)}" is not in the list.`);
      continue;
    }
    bad.guard(row, () => (groups[place] ??= []).push(numberAt(value, row, { unit: "" }, 0)));
  }
  bad.settle();
  return { names: list.names, values: groups };
}
