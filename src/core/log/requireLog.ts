import { InvalidInput } from "../basis/problem";
import { requirePositive } from "../basis/require";
import { told } from "../basis/telling";
import type { ScaledLog } from "./logRule";

const BEYOND_ANY_LOG = 1000; // in and ft; a choice of ours, so that no formula runs over

/** Throws InvalidInput unless diameter and length are numbers above 0 that a log can have. */
export function requireLog({ diameter, length }: ScaledLog): void {
  requirePositive("Diameter", diameter, "in");
  requirePositive("Length", length, "ft");
  if (diameter > BEYOND_ANY_LOG) throw tooLarge("Diameter", diameter, "in");
  if (length > BEYOND_ANY_LOG) throw tooLarge("Length", length, "ft");
}

const tooLarge = (what: string, value: number, unit: string) =>
  new InvalidInput(
    (telling) =>
      `${what} should be at most ${told(telling, BEYOND_ANY_LOG, unit)}. You have ${telling.number(value, unit)}.`,
  );
