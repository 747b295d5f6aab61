import { InvalidInput, OutOfRange } from "../../core/basis/problem";
import { byTotalHeight, heightsMeasured } from "../../core/cruise/checkHeight";
import type { Product } from "../../core/value/buckOrder";
import type { CutTree } from "../../core/value/cutTree";
import { BadRows } from "./badRows";
import { column, filledRows, isNothing, numberAt, sharedRows } from "./columns";
import { chosenOr } from "./measuredIn";
import { productsIn } from "./products";
import { isLeftOut } from "./readings";
import { stemsByHeight, stemsByLogs } from "./tallyStems";
import { type CutterArguments, cutterOf } from "./treeCutter";
import type { UnitSystem } from "./unitSystem";

export interface ProductArguments extends CutterArguments {
  readonly plot: unknown;
  readonly count: unknown;
  readonly species: unknown;
  readonly dbh: unknown;
  readonly height: unknown;
  readonly wood: unknown;
  readonly logs: unknown;
  readonly measured: unknown;
  readonly cull: unknown;
  readonly formClass: unknown;
}

/** A tally cut into products, row by row. */
export interface ProductTally {
  readonly products: readonly Product[];
  /** By total height, or by logs; the two are never mixed in one table. */
  readonly byTotalHeight: boolean;
  /** What each row with a tree is cut into, cull taken off; undefined where the height that is asked for is missing. */
  readonly rows: readonly (CutTree | undefined)[];
  /** Rows with a diameter. */
  readonly trees: readonly boolean[];
  readonly withLumber: boolean;
}

/** @throws InvalidInput naming the first bad row and how many more there are */
export function productTally(given: ProductArguments, units: UnitSystem): ProductTally {
  const products = productsIn(given.products, units);
  const height = chosenOr("Height measured", given.measured, heightsMeasured, byTotalHeight);
  const lists = {
    species: column(given.species, "Species"),
    dbh: column(given.dbh, "DBH"),
    height: column(given.height, "Height"),
    wood: column(given.wood, "Wood"),
    logs: column(given.logs, "Logs"),
    cull: column(given.cull, "Cull"),
    formClass: column(given.formClass, "Form class"),
  };
  const { dbh } = lists;
  // As long as the longest list that says something: the other lists of the tally are read beside what comes of this.
  const all = [...Object.values(lists), column(given.plot, "Plot"), column(given.count, "Count")];
  const rows = Math.min(sharedRows(all), Math.max(...all.map((list) => filledRows(list))));
  const withLumber = !isLeftOut(given.boards);
  if (rows > 0) requireSaleable(products);
  const cut = cutterOf(given, products, withLumber, height.total);
  const stemAt = height.total ? stemsByHeight(lists, given, units) : stemsByLogs(lists, units);

  const bad = new BadRows();
  const trees: boolean[] = [];
  const found: (CutTree | undefined)[] = [];
  for (let row = 0; row < rows; row += 1) {
    trees.push(!isNothing(dbh.at(row)));
    found.push(undefined);
    if (!trees[row]) continue;
    bad.guard(row, () => {
      const stem = stemAt(row);
      if (!stem) return;
      const cull = numberAt(lists.cull, row, { unit: "%", low: 0, high: 100 }, 0);
      found[row] = sound(cut(stem.key, stem.make), cull);
    });
  }
  bad.settle();
  return { products, byTotalHeight: height.total, rows: found, trees, withLumber };
}

/** @throws when the list cannot say what pays best, or says two things under one name */
function requireSaleable(products: readonly Product[]): void {
  if (products.length === 0) throw new OutOfRange("Your list has no products yet.");
  if (products.every(({ price }) => price === 0)) throw new OutOfRange("No product in your list has a price.");
  for (const { name, measure } of products) {
    const other = products.find((one) => one.name === name);
    if (other && other.measure.unit !== measure.unit) {
      throw new InvalidInput(`"${name}" is sold in two units. Give each way of selling it a name of its own.`);
    }
  }
}

/** Cull takes its share of every product; that wood stays in the woods. */
function sound({ volume, wood, value, left, lumber }: CutTree, cull: number): CutTree {
  if (cull === 0) return { volume, wood, value, left, lumber };
  const kept = 1 - cull / 100;
  const less = (amounts: readonly number[]) => amounts.map((amount) => amount * kept);
  const sold = wood.reduce((sum, one) => sum + one, 0);
  return {
    volume: less(volume),
    wood: less(wood),
    value: less(value),
    left: left + sold * (1 - kept),
    lumber: lumber * kept,
  };
}
