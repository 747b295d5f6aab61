import { InvalidInput, OutOfRange } from "./problem";

/** Throws InvalidInput unless the value is a finite number above 0. */
export function requirePositive(what: string, value: number, unit = ""): void {
  requireFinite(what, value, unit);
  if (value <= 0) throw new InvalidInput(`${what} should be above 0${withUnit(unit)}. You have ${shown(value)}.`);
}

/** Throws InvalidInput unless the value is a finite number of 0 or more. */
export function requireNotNegative(what: string, value: number, unit = ""): void {
  requireFinite(what, value, unit);
  if (value < 0) throw new InvalidInput(`${what} should be 0 or more${withUnit(unit)}. You have ${shown(value)}.`);
}

/** Throws InvalidInput unless low <= value <= high. */
export function requireBetween(what: string, value: number, low: number, high: number, unit = ""): void {
  requireFinite(what, value, unit);
  if (value < low || value > high) {
    const hint = value > high && value / 10 >= low && value / 10 <= high ? " Missing a decimal point?" : "";
    throw new InvalidInput(
      `${what} should be between ${shown(low)} and ${shown(high)}${withUnit(unit)}. You have ${shown(value)}.${hint}`,
    );
  }
}

/** Throws OutOfRange when the value lies below the least that the source covers. */
export function requireAtLeast(source: string, value: number, least: number, unit: string): void {
  if (value < least) {
    throw new OutOfRange(
      `${source} as published has no value below ${shown(least)} ${unit}. You have ${shown(value)}.`,
    );
  }
}

/** A number as a person would write it: no exponent, no more than six significant decimals. */
export function shown(value: number): string {
  if (!Number.isFinite(value)) return "a number too large to use";
  if (Math.abs(value) >= 1e15) return value.toExponential(3);
  return String(Number(value.toFixed(6)));
}

function requireFinite(what: string, value: number, unit: string): void {
  if (!Number.isFinite(value)) {
    throw new InvalidInput(`${what} needs a number${unit && ` in ${unit}`}, but it is missing or too large to use.`);
  }
}

const withUnit = (unit: string) => unit && ` ${unit}`;
