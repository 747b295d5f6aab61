import { inches } from "../basis/units";
import { classNumbers } from "./classNumbers";
import { designOf, type Cruise } from "./cruise";
import { classesInTheMiddle, type ClassRule } from "./classRules";

/** Amounts per acre by diameter class and species; classes without trees between the others are kept. */
export interface ClassTable {
  /** Numbers of the classes, from the thinnest to the thickest. */
  readonly classes: readonly number[];
  /** amounts[class][species] */
  readonly amounts: readonly (readonly number[])[];
}

/** What a table adds up: trees for a stand table, volume for a stock table. */
export type Amount = "trees" | "volume";

/**
 * Stand table (trees per acre) or stock table (volume per acre) by diameter class and species.
 *
 * @param species number of the species of each line, counted from 0
 * @param width width of a diameter class [in]
 */
export function classTable(
  cruise: Cruise,
  species: ArrayLike<number>,
  speciesCount: number,
  width: number,
  amount: Amount,
  rule: ClassRule = classesInTheMiddle,
): ClassTable {
  const { method, size, plots, plot, dbh, count, volume } = cruise;
  const { weight } = designOf(cruise);
  const weights = weight ? weight.reduce((sum, one) => sum + one, 0) : plots;
  const lines = dbh.length;
  const { numbers, first, last } = classNumbers(dbh, width, rule);
  const classes = lines === 0 ? [] : Array.from({ length: last - first + 1 }, (_, k) => first + k);
  const sums = new Float64Array(classes.length * speciesCount);
  for (let line = 0; line < lines; line += 1) {
    const at = ((numbers[line] as number) - first) * speciesCount + (species[line] as number);
    const each = amount === "trees" ? 1 : (volume?.[line] ?? 0);
    const place = plot[line] as number;
    const diameter = inches(dbh[line] as number);
    const standsFor = (count[line] as number) * method.treesPerAcre(diameter, size.ofTree(place, diameter));
    const trees = (standsFor * (weight?.[place] ?? 1)) / weights;
    sums[at] = (sums[at] as number) + trees * each;
  }
  const amounts = classes.map((_, k) => Array.from(sums.subarray(k * speciesCount, (k + 1) * speciesCount)));
  return { classes, amounts };
}
