import { InvalidInput, OutOfRange } from "../basis/problem";
import { requireBetween, requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { dollars, feet, type Dollars, type Feet, type Inches } from "../basis/units";
import type { ProductMeasure } from "./productMeasures";
import { soundStretches, type Flaw } from "./soundStretches";

/** What can be sold from a stem. */
export interface Product {
  readonly name: string;
  /** Smallest diameter inside bark at the top of a log. [in] */
  readonly smallestEnd: Inches;
  /** Lengths that are bought, trim left out: the shortest, and every step up to the longest. [ft] */
  readonly shortest: Feet;
  readonly longest: Feet;
  readonly step: Feet;
  readonly measure: ProductMeasure;
  /** For a thousand board feet or one cubic foot, as it is measured. [$] */
  readonly price: number;
}

/** A standing stem that tapers from the stump to the tip. */
export interface Stem {
  readonly height: Feet;
  /** Inside bark. */
  readonly diameterAt: (h: Feet) => Inches;
  /** Wood between two heights. [ft3] */
  readonly woodBetween: (from: Feet, to: Feet) => number;
}

export interface BuckOrder {
  readonly stem: Stem;
  readonly products: readonly Product[];
  readonly stump: Feet;
  /** Left on every log beyond the length that is bought. [ft] */
  readonly trim: Feet;
  /** Stretches that no log may reach into, and heights at which the stem has to be cut. */
  readonly flaws?: readonly Flaw[];
}

/** One log of the plan, from where it is cut off at the bottom to where it is cut off at the top, trim included. */
export interface BuckedLog {
  readonly from: Feet;
  readonly to: Feet;
  readonly product: Product;
  /** Length that is bought, trim left out. [ft] */
  readonly length: Feet;
  /** Inside bark, where it is cut off. */
  readonly smallEnd: Inches;
  readonly volume: number;
  readonly value: Dollars;
}

/** Most lengths that all products together may be cut in, so that an answer never takes long: a choice of ours. */
const MOST_LENGTHS = 200;
export const SHORTEST_STEP = feet(0.1);
/** Cuts that lie closer than this are the same cut: it only mends how sums are rounded. [ft] */
const SAME_CUT = 1e-6;

/**
 * The best-paying way to cut a stem into logs, by dynamic programming.
 *
 *     best(p) = greatest of 0 and, over every product and length L that fits, value(p, L) + best(p + L + trim)
 *
 *     p  height of a cut, from the stump up, and again from the top of each flaw    [ft]
 *
 * Cuts may fall anywhere: heights are sums of lengths and trims as they are, on no grid that would round them. Logs are
 * cut one upon the other from the bottom of each sound stretch. That loses nothing: stems taper, so a log that is moved
 * down has no less of a small end and no less wood. The small end is measured where the log is cut off, above its trim.
 * Width of the cuts is left out.
 *
 * @returns the logs from the stump up
 * @throws InvalidInput when a measure cannot be used
 * @throws OutOfRange when no product fits anywhere
 */
export function buckPlan(order: BuckOrder): readonly BuckedLog[] {
  requireOrder(order);
  const { stem, stump, flaws = [] } = order;
  const logs = soundStretches(stump, stem.height, flaws).flatMap(([from, to]) => bestOf(order, from, to));
  if (logs.length === 0) {
    const unpriced = order.products.length > 0 && order.products.every(({ price }) => price === 0);
    throw new OutOfRange(unpriced ? "No product in your list has a price." : "No product in your list fits this stem.");
  }
  return logs;
}

/** The best from one cut upwards: its value, its lowest log, and the best above that one. */
interface Best {
  readonly value: number;
  readonly log?: BuckedLog;
  readonly above?: Best;
}

const NOTHING: Best = { value: 0 };

function bestOf(order: BuckOrder, bottom: number, top: number): BuckedLog[] {
  const known = new Map<number, Best>();

  const bestFrom = (p: number): Best => {
    const key = Math.round(p / SAME_CUT);
    const before = known.get(key);
    if (before) return before;
    let best = NOTHING;
    for (const log of logsFrom(order, p, top)) {
      const above = bestFrom(log.to);
      const value = log.value + above.value;
      if (value > best.value) best = { value, log, above };
    }
    known.set(key, best);
    return best;
  };

  const logs: BuckedLog[] = [];
  for (let at: Best | undefined = bestFrom(bottom); at?.log; at = at.above) logs.push(at.log);
  return logs;
}

/** Every log that may be cut with its bottom at a height and its top no higher than another. */
export function* logsFrom({ stem, products, trim }: BuckOrder, p: number, top: number): Generator<BuckedLog> {
  const from = feet(p);
  for (const product of products) {
    for (const length of lengthsOf(product)) {
      const to = feet(p + length + trim);
      if (to > top + SAME_CUT) break;
      const smallEnd = stem.diameterAt(feet(Math.min(to, stem.height)));
      if (smallEnd < product.smallestEnd) break;
      const volume = product.measure.volume({
        smallEnd,
        largeEnd: () => stem.diameterAt(from),
        middle: () => stem.diameterAt(feet(p + length / 2)),
        length,
        wood: () => stem.woodBetween(from, feet(p + length)),
      });
      if (volume === undefined) continue;
      const value = dollars((volume / product.measure.perPrice) * product.price);
      yield { from, to, product, length, smallEnd, volume, value };
    }
  }
}

export function* lengthsOf({ shortest, longest, step }: Product): Generator<Feet> {
  for (let i = 0; shortest + i * step <= longest + SAME_CUT; i += 1) yield feet(shortest + i * step);
}

function requireOrder({ stem, products, stump, trim }: BuckOrder): void {
  requirePositive("Height", stem.height, "ft");
  requirePositive("Stump height", stump, "ft");
  requireNotNegative("Trim", trim, "ft");
  let lengths = 0;
  for (const { name, smallestEnd, shortest, longest, step, price } of products) {
    requirePositive(`Smallest small end of "${name}"`, smallestEnd, "in");
    requirePositive(`Shortest length of "${name}"`, shortest, "ft");
    if (longest < shortest) throw new InvalidInput(`The longest length of "${name}" should not be below its shortest.`);
    requireBetween(`Step of "${name}"`, step, SHORTEST_STEP, 100, "ft");
    requireNotNegative(`Price of "${name}"`, price, "$");
    lengths += 1 + Math.floor((longest - shortest) / step);
  }
  if (lengths > MOST_LENGTHS) {
    throw new InvalidInput(`Your products should have at most ${MOST_LENGTHS} lengths in all. You have ${lengths}.`);
  }
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "The best-paying way to cut a stem",
    where: "dynamic programming over cuts; small end measured above the trim, width of cuts left out",
    standing: "choice of ours",
  },
];
