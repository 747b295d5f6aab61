import { NameMatch } from "../../core/basis/nameMatch";
import { scientificNames } from "../../core/tree/national/scientificNames";
import { allSpecies } from "../../core/tree/national/species";
import { wordsBegin, wordsIn } from "./wordsBegin";

/** A species of the national list, as one picks it. */
export interface FoundSpecies {
  readonly name: string;
  readonly scientific: string;
  /** Number in the national forest inventory. */
  readonly fia: number;
}

interface Entry extends FoundSpecies {
  readonly words: readonly string[];
}

let list: readonly Entry[] | undefined;
let likeness: NameMatch<Entry> | undefined;

/** The whole list with its words, parted once, since it is searched with every letter. */
const all = (): readonly Entry[] =>
  (list ??= allSpecies().map((species) => {
    const scientific = scientificNames().get(species) ?? "";
    const { name, code: fia } = species;
    return { name, scientific, fia, words: wordsIn([name, scientific, String(fia)]) };
  }));

/**
 * Species whose common name, scientific name or inventory code a text begins, word by word; the ones whose common name
 * begins with it come first. Where there is none, those with names that are like it.
 */
export function searchSpecies(text: string, most: number): readonly FoundSpecies[] {
  const begins = (one: FoundSpecies) => (one.name.toLowerCase().startsWith(text.trim().toLowerCase()) ? 0 : 1);
  const found = all().filter(({ words }) => wordsBegin(text, words));
  if (found.length > 0) return [...found].sort((one, other) => begins(one) - begins(other)).slice(0, most);
  likeness ??= new NameMatch(all(), ({ name, scientific }) => [name, scientific]);
  return likeness.like(text, most);
}
