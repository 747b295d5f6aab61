import { OutOfRange } from "./problem";

/** A species as tables name it. */
export interface NamedSpecies {
  readonly code: number;
  readonly name: string;
  readonly scientific: string;
}

const FEW = 4; // names that one sentence can hold

/**
 * The species that a text means: its common name, its scientific name or its number in the Forest Service's inventory.
 * Case, hyphens, commas and the order of the words make no difference: "Oak, northern red" is northern red oak.
 *
 * @throws OutOfRange when it is none of the list, naming those that are like it
 */
export function findSpecies<T extends NamedSpecies>(text: string, list: readonly T[]): T {
  const wanted = key(text);
  const found = list.find(({ code, name, scientific }) =>
    [String(code), key(name), key(scientific)].some((known) => known === wanted),
  );
  if (found) return found;
  throw new OutOfRange(`"${text.slice(0, 60)}" is not in the wood table. ${suggestion(text, list)}`);
}

/** What the user may have meant: names that share the most words, or words that begin alike, with what he wrote. */
function suggestion(text: string, list: readonly NamedSpecies[]): string {
  const wanted = words(text);
  const scored = list.map((one) => ({
    name: one.name,
    score: likeness(wanted, words(`${one.name} ${one.scientific}`)),
  }));
  const best = Math.max(...scored.map(({ score }) => score));
  const names = scored.filter(({ score }) => score === best).map(({ name }) => name);
  if (best === 0)
    return "Give a common name such as northern red oak, a scientific name, or an inventory code such as 833.";
  if (names.length > FEW) return `It has ${names.slice(0, FEW).join(", ")} and ${names.length - FEW} more like it.`;
  return `Did you mean ${names.join(", ").replace(/, ([^,]*)$/, " or $1")}?`;
}

const WORD = 2;
const BEGINNING = 1;

const likeness = (wanted: readonly string[], known: readonly string[]): number =>
  wanted.reduce((score, word) => {
    if (known.includes(word)) return score + WORD;
    return known.some((other) => beginsAlike(word, other)) ? score + BEGINNING : score;
  }, 0);

const LETTERS = 3; // that two words must share at the start to be called alike

const beginsAlike = (one: string, other: string): boolean =>
  one.length >= LETTERS && one.slice(0, LETTERS) === other.slice(0, LETTERS);

const words = (text: string): string[] => text.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];
const key = (text: string): string => words(text).sort().join(" ");
