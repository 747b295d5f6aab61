import { NO_SPECIES } from "./tally";

/** Numbers of the species in the order of their names; trees without a species come last. */
export const speciesByName = (names: readonly string[]) =>
  names
    .map((name, kind) => ({
      kind,
      key: name === NO_SPECIES ? "\uffff" : name.toLowerCase(),
    }))
    .sort((one, other) => (one.key < other.key ? -1 : one.key > other.key ? 1 : 0))
    .map(({ kind }) => kind);
