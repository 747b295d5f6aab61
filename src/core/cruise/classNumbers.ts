import type { ClassRule } from "./classRules";

/** The diameter class of each tree, and the first and the last class that holds one. */
export interface ClassNumbers {
  readonly numbers: Int32Array;
  /** Infinity and -Infinity while there are no trees. */
  readonly first: number;
  readonly last: number;
}

/** @param width width of a diameter class, in the unit of the diameters */
export function classNumbers(dbh: ArrayLike<number>, width: number, rule: ClassRule): ClassNumbers {
  const numbers = new Int32Array(dbh.length);
  let [first, last] = [Infinity, -Infinity];
  for (let line = 0; line < numbers.length; line += 1) {
    const number = rule.numberOf(dbh[line] as number, width);
    numbers[line] = number;
    if (number < first) first = number;
    if (number > last) last = number;
  }
  return { numbers, first, last };
}
