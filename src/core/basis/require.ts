import { InvalidInput, OutOfRange } from "./problem";
import { told, type Telling } from "./telling";

export { shown } from "./shown";

/** Throws InvalidInput unless the value is a finite number above 0. */
export function requirePositive(what: string, value: number, unit = ""): void {
  requireFinite(what, value, unit);
  if (value > 0) return;
  throw new InvalidInput(
    (telling) => `${what} should be above 0${withUnit(telling, unit)}. You have ${telling.number(value, unit)}.`,
  );
}

/** Throws InvalidInput unless the value is a finite number of 0 or more. */
export function requireNotNegative(what: string, value: number, unit = ""): void {
  requireFinite(what, value, unit);
  if (value >= 0) return;
  throw new InvalidInput(
    (telling) => `${what} should be 0 or more${withUnit(telling, unit)}. You have ${telling.number(value, unit)}.`,
  );
}

/** Throws InvalidInput unless low <= value <= high, both of them finite. */
export function requireBetween(what: string, value: number, low: number, high: number, unit = ""): void {
  if (value >= low && value <= high) return;
  requireFinite(what, value, unit);
  const hint = value > high && value / 10 >= low && value / 10 <= high ? " Missing a decimal point?" : "";
  throw new InvalidInput((telling) => {
    const [least, most, came] = [low, high, value].map((one) => telling.number(one, unit));
    return `${what} should be between ${least} and ${most}${withUnit(telling, unit)}. You have ${came}.${hint}`;
  });
}

/** Throws OutOfRange when the value lies below the least that the source covers. */
export function requireAtLeast(source: string, value: number, least: number, unit: string): void {
  if (!(value < least)) return;
  throw new OutOfRange(
    (telling) =>
      `${source} as published has no value below ${told(telling, least, unit)}. You have ${telling.number(value, unit)}.`,
  );
}

function requireFinite(what: string, value: number, unit: string): void {
  if (Number.isFinite(value)) return;
  throw new InvalidInput(
    (telling) => `${what} needs a number${unit && ` in ${telling.unit(unit)}`}, but it is missing or too large to use.`,
  );
}

const withUnit = (telling: Telling, unit: string) => unit && ` ${telling.unit(unit)}`;
