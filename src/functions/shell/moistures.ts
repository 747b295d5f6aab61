import { percent, type Percent } from "../../core/basis/units";
import { asCells, measured, type Reading } from "./readings";

/** Moisture of wood: a figure, or green as it came from the tree. */
export type Moisture = Percent | "green";

/** Moisture contents, in percent or as the word Green. Below 1 % stands a cell in percent format, which is asked about. */
export function moistures(given: unknown, what: string): Reading<Moisture> {
  const cells = asCells(given);
  const inPercent = measured(given, what, percent, { unit: "%", low: 1, high: 300 });
  return {
    ...inPercent,
    at: (row, column) => (isGreen(cells[row]?.[column]) ? "green" : inPercent.at(row, column)),
  };
}

const isGreen = (cell: unknown): boolean => typeof cell === "string" && cell.trim().toLowerCase() === "green";
