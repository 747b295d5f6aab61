import { textOf } from "../../core/basis/choices";
import { InvalidInput, OutOfRange } from "../../core/basis/problem";
import { feet, inches, percent, type Feet } from "../../core/basis/units";
import { byTotalHeight, heightsMeasured } from "../../core/cruise/checkHeight";
import type { SawLog } from "../../core/sawing/sawLog";
import { USUAL_FORM_CLASS } from "../../core/tree/formClass";
import { findSpecies } from "../../core/tree/national/findSpecies";
import { LEAST_HEIGHT, MOST_HEIGHT, stemEquations, STUMP } from "../../core/tree/national/stemEquations";
import type { Product, Stem } from "../../core/value/buckOrder";
import { cutTree, type CutTree } from "../../core/value/cutTree";
import { formClassStem } from "../../core/value/formClassStem";
import { standingStem } from "../../core/value/standingStem";
import { logLumber } from "../../core/value/treeLumber";
import { USUAL_TRIM } from "./buckOrder";
import { BadRows, column, filledRows, isNothing, numberAt, remembered, sharedRows, type Column } from "./columns";
import { standOf } from "./heightTrees";
import { boundsIn, chosenOr } from "./measuredIn";
import { productsIn } from "./products";
import { isLeftOut } from "./readings";
import { boardOrder } from "./sawingArguments";
import { dbhBounds } from "./tally";
import type { UnitSystem } from "./unitSystem";

export interface ProductArguments {
  readonly plot: unknown;
  readonly count: unknown;
  readonly species: unknown;
  readonly dbh: unknown;
  readonly height: unknown;
  readonly logs: unknown;
  readonly products: unknown;
  readonly measured: unknown;
  readonly cull: unknown;
  readonly formClass: unknown;
  readonly boards: unknown;
  readonly kerf: unknown;
  readonly pattern: unknown;
  readonly division: unknown;
  readonly origin: unknown;
  readonly units: unknown;
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

interface StemMaker {
  /** Stems with the same key are alike. */
  readonly key: string;
  readonly make: () => Stem;
}

type Lists = Readonly<Record<"species" | "dbh" | "height" | "logs" | "formClass", Column>>;

function stemsByHeight(lists: Lists, { division, origin }: ProductArguments, units: UnitSystem) {
  const stand = standOf(division, origin);
  const equationsOf = remembered((cell: unknown) => {
    if (isNothing(cell)) throw new InvalidInput("the species is missing.");
    return stemEquations(findSpecies(textOf(cell).slice(0, 100)), stand);
  });
  return (row: number): StemMaker | undefined => {
    const tall = numberAt(lists.height, row, boundsIn(units.distance, LEAST_HEIGHT, MOST_HEIGHT), 0);
    if (tall === 0) return undefined;
    const dbh = inches(numberAt(lists.dbh, row, dbhBounds(units), 0) / units.diameter.perOurs);
    const height = feet(tall / units.distance.perOurs);
    const equations = equationsOf(lists.species.at(row));
    return {
      key: `${equations.species.code} ${dbh} ${height}`,
      make: () => standingStem(equations, { dbh, height }),
    };
  };
}

function stemsByLogs(lists: Lists, units: UnitSystem) {
  return (row: number): StemMaker | undefined => {
    const logs = numberAt(lists.logs, row, { unit: "logs of 16 ft", low: 0.1, high: 10 }, 0);
    if (logs === 0) return undefined;
    const dbh = inches(numberAt(lists.dbh, row, dbhBounds(units), 0) / units.diameter.perOurs);
    const formClass = percent(numberAt(lists.formClass, row, { unit: "%", low: 0, high: 100 }, USUAL_FORM_CLASS));
    return { key: `${dbh} ${logs} ${formClass}`, make: () => formClassStem({ dbh, logs, formClass }) };
  };
}

type Cutter = (key: string, make: () => Stem) => CutTree;

/** Every change of one tree asks for the whole table anew: what the others were cut into under this order is kept. */
let last: { readonly order: string; readonly cut: Cutter } | undefined;

function cutterOf(given: ProductArguments, products: readonly Product[], withLumber: boolean, total: boolean): Cutter {
  const { boards, kerf, pattern, division, origin, units } = given;
  const order = JSON.stringify([given.products, boards, kerf, pattern, division, origin, units, total]);
  if (last?.order === order) return last.cut;
  const known = new Map<string, CutTree>();
  const from: Feet = total ? feet(0) : STUMP;
  const lumberOf = withLumber ? toTenths(logLumber(boardOrder({ boards, kerf, pattern, units }))) : undefined;
  const orderly = { products, stump: STUMP, trim: feet(USUAL_TRIM), ...(lumberOf && { lumberOf }) };
  const cut: Cutter = (key, make) => {
    const before = known.get(key);
    if (before) return before;
    const fresh = cutTree(make(), from, orderly);
    known.set(key, fresh);
    return fresh;
  };
  last = { order, cut };
  return cut;
}

/** Logs of a curve are all a hair apart; as a stick reads them, down to the tenth of an inch, few plans serve many. */
const toTenths =
  (lumberOf: (log: SawLog) => number) =>
  ({ smallEnd, largeEnd, length }: SawLog): number =>
    lumberOf({ smallEnd: tenth(smallEnd), largeEnd: tenth(Math.max(smallEnd, largeEnd)), length });

const tenth = (diameter: number) => inches(Math.floor(diameter * 10) / 10);

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
