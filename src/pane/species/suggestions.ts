import type { KnownSpecies } from "../tally/tallyTree";
import type { FoundSpecies } from "./speciesSearch";
import { wordsBegin, wordsIn } from "./wordsBegin";

/** A species that a half-typed line may mean: one of the owner's list, or one of the national list to be added to it. */
export type Suggestion =
  | { readonly kind: "own"; readonly species: KnownSpecies }
  | { readonly kind: "national"; readonly species: FoundSpecies };

export type SpeciesSearch = (text: string, most: number) => readonly FoundSpecies[];

const MOST = 6;
/** Fewer letters fit too much of the national list to be of help. */
const LEAST_LETTERS = 3;

/** What a half-typed species may mean. A code or name that is complete needs no help. */
export function suggestionsFor(
  text: string,
  list: readonly KnownSpecies[],
  search: SpeciesSearch | undefined,
): readonly Suggestion[] {
  const said = text.trim();
  const same = (one: string) => one.toLowerCase() === said.toLowerCase();
  if (said === "" || list.some(({ code, name }) => same(code) || same(name))) return [];
  const own = list.filter(({ code, name, scientific = "", fia }) =>
    wordsBegin(said, wordsIn([code, name, scientific, String(fia ?? "")])),
  );
  const found = search && said.length >= LEAST_LETTERS ? search(said, MOST) : [];
  const listed = (one: FoundSpecies) => list.find(({ fia }) => fia === one.fia);
  const near = found.flatMap((one) => listed(one) ?? []).filter((species) => !own.includes(species));
  return [
    ...[...own, ...near].map((species) => ({ kind: "own", species }) as const),
    ...found.filter((one) => !listed(one)).map((species) => ({ kind: "national", species }) as const),
  ].slice(0, MOST);
}

/** A suggestion in words: what is typed for it, its name, its scientific name. */
export function sayOfSuggestion({ kind, species }: Suggestion): string {
  const scientific = species.scientific ? `, ${species.scientific}` : "";
  if (kind === "own") return `${species.code}: ${species.name}${scientific}`;
  return `${species.name}${scientific}, ${species.fia}`;
}

/** The species part of a tally line while nothing else is typed yet; undefined once a number stands there. */
export const halfTypedSpecies = (text: string): string | undefined =>
  /^\s*\p{L}[\p{L}\s.'’-]*$/u.test(text) ? text.trim() : undefined;
