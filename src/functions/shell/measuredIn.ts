import { InvalidInput } from "../../core/basis/problem";
import { chosen, type Choice } from "../../core/basis/choices";
import { inches, type Inches } from "../../core/basis/units";
import { measured, oneText, type Bounds, type Reading } from "./readings";
import type { Unit, UnitSystem } from "./unitSystem";

/** Bounds that are known in our own unit, in the unit that the user writes. */
export const boundsIn = (unit: Unit, low: number, high: number): Bounds => ({
  unit: unit.name,
  low: low * unit.perOurs,
  high: high * unit.perOurs,
});

/** A measurement in the unit that the user writes, read into ours. The bounds are given in ours. */
export function measuredIn<T>(
  given: unknown,
  what: string,
  unit: Unit,
  tag: (value: number) => T,
  low: number,
  high: number,
): Reading<T> {
  const ours = unit.perOurs === 1 ? tag : (value: number) => tag(value / unit.perOurs);
  return measured(given, what, ours, boundsIn(unit, low, high));
}

/** Diameter at breast height. Wider than any sound tally, so that only a slip falls outside. */
export const measuredDbh = (given: unknown, units: UnitSystem): Reading<Inches> =>
  measuredIn(given, "DBH", units.diameter, inches, 1, 80);

/** One entry of a fixed list; left out, the one that stands for it. */
export function chosenOr<T extends Choice>(what: string, given: unknown, choices: readonly T[], leftOut: T): T {
  const text = oneText(given, what);
  return text === "" ? leftOut : chosen(what, text, choices);
}

/** The one value of a function that takes no column; undefined when the cell is blank. */
export function single<T>(reading: Reading<T>): T | undefined {
  const cells = reading.rows * reading.columns;
  if (cells > 1) throw new InvalidInput(`${reading.what} should be one cell here. You have ${cells}.`);
  return reading.at(0, 0);
}
