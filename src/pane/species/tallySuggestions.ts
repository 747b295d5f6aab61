import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { finderFor } from "./finderState";
import { nationalSearch } from "./nationalSearch";
import { pickForTally } from "./pickSpecies";
import { proposeCode } from "./proposeCode";
import { halfTypedSpecies, sayOfSuggestion, suggestionsFor, type Suggestion } from "./suggestions";

/** Suggestions under a box, and what is done with them. */
export interface Suggesting {
  readonly options: readonly string[];
  readonly active: number;
  readonly pick: (place: number) => void;
  readonly choose: (place: number) => void;
  readonly close: () => void;
}

const none: Suggesting = { options: [], active: -1, pick: () => {}, choose: () => {}, close: () => {} };

/** Species that the half-typed line of the tally may begin with. */
export function tallySuggestions(pane: Pane, job: Job): Suggesting {
  const { text, editing } = pane.state.tally;
  const said = editing === undefined ? halfTypedSpecies(text) : undefined;
  const finder = finderFor(pane.state.finder, text);
  if (said === undefined || finder.closed) return none;
  const found = suggestionsFor(said, job.species, said.length > 1 ? nationalSearch(pane) : undefined);
  const words = (one: Suggestion) =>
    one.kind === "own"
      ? sayOfSuggestion(one)
      : `Add ${proposeCode(one.species.name, job.species)}: ${sayOfSuggestion(one)}`;
  return {
    options: found.map(words),
    active: Math.min(finder.active, found.length - 1),
    pick: (place) => {
      const picked = found[place];
      if (picked) pickForTally(pane, job, picked);
    },
    choose: (active) => pane.set({ finder: { ...finder, active } }),
    close: () => pane.set({ finder: { ...finder, closed: true } }),
  };
}
