import { didYouMean, NameMatch } from "../../core/basis/nameMatch";
import type { KnownSpecies } from "./tallyTree";

/** That a species is not in the owner's list, and which of the list may have been meant. */
export function notListed(typed: string, species: readonly KnownSpecies[]): string {
  const hint = nearest(typed, species);
  const found = `"${typed.slice(0, 60)}" is not in your species list.`;
  return hint === "" ? `${found} Pick it from the list below the box, or add it on Setup.` : `${found} ${hint}`;
}

/** "Did you mean rm (red maple)?", or nothing when no name is like the text. */
export function nearest(typed: string, species: readonly KnownSpecies[]): string {
  const names = new NameMatch(species, ({ name, scientific = "" }) => [name, scientific].filter((one) => one !== ""));
  return didYouMean(names.like(typed).map(({ code, name }) => `${code} (${name})`));
}
