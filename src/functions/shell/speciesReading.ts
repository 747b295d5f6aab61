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
  const known = new Map<unknown, () => T | undefined>();
  return {
    ...named,
    at(row, column) {
      const cell: unknown = cells[row]?.[column];
      let ready = known.get(cell);
      if (!ready) {
        ready = outcome(() => {
          const name = named.at(row, column);
          return name === undefined ? undefined : prepare(findSpecies(name));
        });
        known.set(cell, ready);
      }
      return ready();
    },
  };
}

/** Does the work once; its answer or its problem comes back every time. */
function outcome<T>(work: () => T): () => T {
  try {
    const answer = work();
    return () => answer;
  } catch (problem) {
    return () => {
      throw problem;
    };
  }
}
