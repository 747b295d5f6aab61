import { InvalidInput } from "../basis/problem";
import type { Feet } from "../basis/units";

/** A part of a stem that no log may hold: rot, a crook, a fork, what is broken off. [ft above the ground] */
export interface Flaw {
  readonly from: Feet;
  /** The same as `from` where a stem is only to be cut, as in the middle of a sharp crook. */
  readonly to: Feet;
}

/** Where logs may lie, from the stump up. */
export type Stretch = readonly [from: number, to: number];

/**
 * What is left of a stem between its flaws, from the bottom up. Flaws may be given in any order and may overlap.
 *
 * @throws InvalidInput when a flaw ends below where it begins
 */
export function soundStretches(bottom: Feet, top: Feet, flaws: readonly Flaw[]): readonly Stretch[] {
  for (const { from, to } of flaws) {
    if (to < from) throw new InvalidInput("Cull should not end below the height at which it begins.");
  }
  const found: Stretch[] = [];
  let free: number = bottom;
  for (const { from, to } of [...flaws].sort((one, other) => one.from - other.from)) {
    const end = Math.min(from, top);
    if (end > free) found.push([free, end]);
    free = Math.max(free, to);
  }
  if (top > free) found.push([free, top]);
  return found;
}
