import { findSpecies, type NamedSpecies } from "../basis/findSpecies";
import type { Standing } from "../basis/source";
import { percent, type Percent } from "../basis/units";
import { woodProperties } from "../reference/woodProperties";

/** The wood of one species. */
export interface Wood extends NamedSpecies {
  /** Ovendry weight over green volume, against water. */
  readonly gravity: number;
  /** Mean moisture content of the green wood. [%] */
  readonly green: Percent;
  /** Shrinkage from green to ovendry, across the growth rings and along them. [% of the green size] */
  readonly radial: Percent;
  readonly tangential: Percent;
  /** Whether these two were read in print. */
  readonly shrinkage: Standing;
}

export const woods: readonly Wood[] = woodProperties.rows.map(
  ([code, name, scientific, gravity, green, radial, tangential, shrinkage]) => ({
    code,
    name,
    scientific,
    gravity,
    green: percent(green),
    radial: percent(radial),
    tangential: percent(tangential),
    shrinkage,
  }),
);

/**
 * The wood of the species that a text names.
 *
 * @throws OutOfRange naming those that are like it when the table has none
 */
export const findWood = (species: string): Wood => findSpecies(species, woods);
