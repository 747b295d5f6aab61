import type { Feet } from "../../core/basis/units";
import { diameterRoundings, notToWhole, rounderFor, type Rounder } from "../../core/log/diameterRounding";
import { asTheRuleDoes, scaleRoundings, type ScaleRounding } from "../../core/log/scaleRounding";
import { longestOf } from "./logArguments";
import { chosenOr } from "./measuredIn";
import type { UnitSystem } from "./unitSystem";

/** The conventions of a buyer, as the cells gave them. */
export interface GivenConventions {
  readonly round: unknown;
  readonly longest: unknown;
  readonly diameterRounding: unknown;
}

/** How a buyer scales by his rule. */
export interface Conventions {
  readonly rounding: ScaleRounding;
  readonly longest: Feet;
  /** A fresh rounder for a list of so many diameters; undefined where they are taken as they are. */
  readonly rounderOf: (diameters: number) => Rounder | undefined;
}

/**
 * The conventions that every function of log scale takes, in the same order and with the same meaning.
 * @throws InvalidInput when one of them cannot be read
 */
export function conventionsOf(given: GivenConventions, system: UnitSystem): Conventions {
  const toWhole = chosenOr("Diameter rounding", given.diameterRounding, diameterRoundings, notToWhole);
  return {
    rounding: chosenOr("Round", given.round, scaleRoundings, asTheRuleDoes),
    longest: longestOf(given.longest, system),
    rounderOf: (diameters) => (toWhole === notToWhole ? undefined : rounderFor(toWhole, diameters)),
  };
}
