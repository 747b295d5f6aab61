import { feet, inches, type Feet } from "../../core/basis/units";
import type { SawLog } from "../../core/sawing/sawLog";
import { STUMP } from "../../core/tree/national/stemEquations";
import type { Product, Stem } from "../../core/value/buckOrder";
import { cutTree, type CutTree } from "../../core/value/cutTree";
import { logLumber } from "../../core/value/treeLumber";
import { USUAL_TRIM } from "./buckOrder";
import { boardOrder } from "./sawingArguments";

/** What a stem is cut into; the key tells stems apart. */
export type Cutter = (key: string, make: () => Stem) => CutTree;

export interface CutterArguments {
  readonly products: unknown;
  readonly boards: unknown;
  readonly kerf: unknown;
  readonly pattern: unknown;
  readonly division: unknown;
  readonly origin: unknown;
  readonly units: unknown;
}

/** Every change of one tree asks for the whole table anew: what the others were cut into under this order is kept. */
let last: { readonly order: string; readonly cut: Cutter } | undefined;

export function cutterOf(
  given: CutterArguments,
  products: readonly Product[],
  withLumber: boolean,
  total: boolean,
): Cutter {
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
