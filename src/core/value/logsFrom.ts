import { dollars, feet, type Dollars, type Feet, type Inches } from "../basis/units";
import type { BuckOrder, Product, Stem } from "./buckOrder";
import type { StemLog } from "./productMeasures";

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

/** Cuts that lie closer than this are the same cut: it only mends how sums are rounded. [ft] */
export const SAME_CUT = 1e-6;

/** Every log that may be cut with its bottom at a height and its top no higher than another. */
export function* logsFrom({ stem, products, trim }: BuckOrder, p: number, top: number): Generator<BuckedLog> {
  const from = feet(p);
  for (const product of products) {
    for (const length of lengthsOf(product)) {
      const to = feet(p + length + trim);
      if (to > top + SAME_CUT) break;
      const smallEnd = stem.diameterAt(feet(Math.min(to, stem.height)));
      if (smallEnd < product.smallestEnd) break;
      const volume = product.measure.volume(stemLogOf(stem, from, length, smallEnd));
      if (volume === undefined) continue;
      const value = dollars((volume / product.measure.perPrice) * product.price);
      yield { from, to, product, length, smallEnd, volume, value };
    }
  }
}

/** A log as it lies in the stem, ready to be measured; what a measure does not ask for is not worked out. */
export const stemLogOf = (stem: Stem, from: Feet, length: Feet, smallEnd: Inches): StemLog => ({
  smallEnd,
  largeEnd: () => stem.diameterAt(from),
  middle: () => stem.diameterAt(feet(from + length / 2)),
  length,
  wood: () => stem.woodBetween(from, feet(from + length)),
});

export function* lengthsOf({ shortest, longest, step }: Product): Generator<Feet> {
  for (let i = 0; shortest + i * step <= longest + SAME_CUT; i += 1) yield feet(shortest + i * step);
}
