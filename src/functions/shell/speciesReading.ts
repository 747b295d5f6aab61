import { findSpecies } from "../../core/tree/national/findSpecies";
import type { Species } from "../../core/tree/national/species";
import { names, type Reading } from "./readings";

/**
 * A column of species, each made ready for what is asked of it. A column names few species many times, so every name
 * is looked up once; so is a name that is none.
 */
export function speciesReading<T>(given: unknown, prepare: (species: Species) => T): Reading<T> {
  const named = names(given, "Species");
  const known = new Map<string, () => T>();
  return {
    ...named,
    at(row, column) {
      const name = named.at(row, column);
      if (name === undefined) return undefined;
      let ready = known.get(name);
      if (!ready) {
        ready = outcome(() => prepare(findSpecies(name)));
        known.set(name, ready);
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
