import { InvalidInput } from "../basis/problem";
import { requireBetween, requireNotNegative, requirePositive } from "../basis/require";
import { feet, type Feet, type Inches } from "../basis/units";
import type { ProductMeasure } from "./productMeasures";
import type { Flaw } from "./soundStretches";

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

/** Most lengths that all products together may be cut in, so that an answer never takes long: a choice of ours. */
const MOST_LENGTHS = 200;
export const SHORTEST_STEP = feet(0.1);

/** @throws InvalidInput when a measure cannot be used */
export function requireBuckOrder({ stem, products, stump, trim }: BuckOrder): void {
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
