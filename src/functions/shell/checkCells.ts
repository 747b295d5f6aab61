import { InvalidInput } from "../../core/basis/problem";
import { asCells, type Cells } from "./readings";
import { sentenceOf } from "./sentenceOf";

/**
 * One sentence or a blank for each row of a few lists, in the shape of the largest; never an error, since a check that
 * fails has to say so itself. One value stands for every row.
 */
export function checkCells(lists: readonly unknown[], check: (cells: readonly unknown[]) => string): Cells {
  const all = lists.map(asCells);
  const size = (cells: Cells) => cells.length * (cells[0]?.length ?? 0);
  const shape = all.reduce((largest, one) => (size(one) > size(largest) ? one : largest));
  const odd = all.find((one) => size(one) !== 1 && size(one) !== size(shape));
  return shape.map((row, r) =>
    row.map((_, c) =>
      sentenceOf(() => {
        if (odd) throw new InvalidInput(`These lists need the same number of rows: ${size(shape)} and ${size(odd)}.`);
        return check(all.map((cells) => (size(cells) === 1 ? cells[0]?.[0] : cells[r]?.[c]) as unknown));
      }),
    ),
  );
}
