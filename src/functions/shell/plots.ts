import { InvalidInput } from "../../core/basis/problem";
import { NameList } from "../../core/cruise/nameList";
import { column, filledRows, isNothing } from "./columns";

export interface PlotList {
  /** The plots as their list has them. */
  readonly cells: readonly (string | number)[];
  readonly known: NameList;
  /** The row of the list in which each plot stands, so that other lists beside it can be read. */
  readonly rows: readonly number[];
}

/** The name of a plot as a sentence says it: a number as it is, any other text in quotes. */
export function spoken(plot: unknown): string {
  const name = String(plot).trim().slice(0, 60);
  return /^\d+$/.test(name) ? name : `"${name}"`;
}

/** Every plot that was visited, in the order of the list. */
export function plotList(given: unknown): PlotList {
  const list = column(given, "Plot list");
  const cells: (string | number)[] = [];
  const rows: number[] = [];
  const known = new NameList();
  const filled = filledRows(list);
  for (let row = 0; row < filled; row += 1) {
    const cell = list.at(row);
    if (isNothing(cell)) continue;
    if (known.placeOf(String(cell)) !== undefined)
      throw new InvalidInput(`Plot ${spoken(cell)} is in the plot list twice.`);
    known.add(String(cell));
    cells.push(typeof cell === "number" ? cell : String(cell).trim());
    rows.push(row);
  }
  return { cells, known, rows };
}
