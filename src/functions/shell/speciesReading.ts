import { findSpecies } from "../../core/tree/national/findSpecies";
import type { Species } from "../../core/tree/national/species";
import { asCells, names, type Reading } from "./readings";

/**
 * A column of species, each made ready for what is asked of it. A column names few species many times, so what a cell
 * holds is read once; so is a name that is none.
 */
export function speciesReading<T>(given: unknown, prepare: (species: Species) => T): Reading<T> {
  const cells = asCells(given);
  const named = names(cells, "Species");
  const ready = new Map<unknown, T>();
  const failed = new Map<unknown, unknown>();
  const prepared = (cell: unknown, row: number, column: number): T | undefined => {
    if (failed.has(cell)) throw failed.get(cell);
    try {
      const name = named.at(row, column);
      if (name === undefined) return undefined;
      const fresh = prepare(findSpecies(name));
      ready.set(cell, fresh);
      return fresh;
    } catch (problem) {
      failed.set(cell, problem);
      throw problem;
    }
  };
  return {
    ...named,
    at(row, column) {
      const cell: unknown = cells[row]?.[column];
      return ready.get(cell) ?? prepared(cell, row, column);
    },
  };
}
