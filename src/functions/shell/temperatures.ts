import { fahrenheit, type Fahrenheit } from "../../core/basis/units";
import { asCells, measured, type Reading } from "./readings";
import type { UnitSystem } from "./unitSystem";

const fromCelsius = (value: number) => fahrenheit((value * 9) / 5 + 32);

/**
 * Temperatures in F, or in C when metric. A 0 in C is a temperature like any other, though some spreadsheets hand over
 * a blank as 0: the humidity beside it, which cannot be 0, tells whether the row was measured.
 */
export function temperatures(given: unknown, { metric }: UnitSystem): Reading<Fahrenheit> {
  if (!metric) return measured(given, "Temperature", fahrenheit, { unit: "F", low: -40, high: 212 });
  const cells = asCells(given);
  const inCelsius = measured(given, "Temperature", fromCelsius, { unit: "C", low: -40, high: 100 });
  return {
    ...inCelsius,
    at: (row, column) => (cells[row]?.[column] === 0 ? fromCelsius(0) : inCelsius.at(row, column)),
  };
}
