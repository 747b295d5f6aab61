import { OutOfRange } from "../../basis/problem";
import { percent, pounds, type CubicFeet, type Percent, type Pounds } from "../../basis/units";
import type { Species } from "./species";

/** Weight of a cubic foot of water, as the report takes it. [lb/ft3] */
export const WATER = 62.4;

/** How much of its density rotten wood keeps. [1] Table 1, decay code 3 */
const KEPT_BY_SOFTWOOD = 0.92;
const KEPT_BY_HARDWOOD = 0.54;

/**
 * Oven-dry weight of wood.
 *
 *     W = 62.4 G V [1 - cull (1 - k)]
 *
 *     W     weight                                                        [lb]
 *     V     volume, cull included                                         [ft3]
 *     G     oven-dry weight over green volume, as a specific gravity
 *     cull  rotten share of it; k, how much of its density that keeps
 *
 * @throws OutOfRange for a species whose G is not listed
 *
 * [1] core/reference/national/sources.ts
 */
export function dryWood(species: Species, volume: CubicFeet, cull: Percent = percent(0)): Pounds {
  const kept = species.softwood ? KEPT_BY_SOFTWOOD : KEPT_BY_HARDWOOD;
  return pounds(WATER * listed(species, "woodGravity", "wood density") * volume * (1 - (cull / 100) * (1 - kept)));
}

/** A property of a species, for which the list may have none. */
export function listed(species: Species, property: "woodGravity" | "greenMoisture" | "carbon", what: string): number {
  const value = species[property];
  if (value !== undefined) return value;
  throw new OutOfRange(`The national species list has no ${what} for ${species.name}.`);
}
