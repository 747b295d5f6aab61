/** Shortest beginning of a word that is taken for a likeness. */
const LEAST_BEGINNING = 3;
/** Likeness from which on a name is worth proposing, and what each word of it that was not asked for costs. */
const WORTH_PROPOSING = 0.55;
const WORD_TOO_MANY = 0.05;

/**
 * Finds things by the names that people write. Case, hyphens, signs and the order of words make no difference:
 * "Maple, red" is "red maple". What is only like a name is proposed, never taken: "white pine" may be the eastern or
 * the western one.
 */
export class NameMatch<T> {
  private readonly byWords = new Map<string, T[]>();
  private readonly all: { readonly entry: T; readonly words: readonly string[] }[] = [];

  constructor(entries: Iterable<T>, namesOf: (entry: T) => readonly string[]) {
    for (const entry of entries) {
      for (const name of namesOf(entry)) {
        const words = wordsOf(name);
        const same = this.byWords.get(keyOf(words));
        if (!same) this.byWords.set(keyOf(words), [entry]);
        else if (!same.includes(entry)) same.push(entry);
        this.all.push({ entry, words });
      }
    }
  }

  /** All that bear this very name: none, one, or several where a name is shared. */
  bearing(name: string): readonly T[] {
    return this.byWords.get(keyOf(wordsOf(name))) ?? [];
  }

  /** The entries whose names are most like a text, the likest first. */
  like(text: string, most = 3): readonly T[] {
    const asked = wordsOf(text);
    const best = new Map<T, number>();
    for (const { entry, words } of this.all) {
      const likeness = likenessOf(asked, words);
      if (likeness >= WORTH_PROPOSING && likeness > (best.get(entry) ?? 0)) best.set(entry, likeness);
    }
    return [...best]
      .sort(([, one], [, other]) => other - one)
      .slice(0, most)
      .map(([entry]) => entry);
  }
}

/** "Did you mean red maple, silver maple or sugar maple?", or nothing when there is nothing to propose. */
export function didYouMean(names: readonly string[]): string {
  if (names.length === 0) return "";
  const last = names.at(-1) as string;
  return `Did you mean ${names.length === 1 ? last : `${names.slice(0, -1).join(", ")} or ${last}`}?`;
}

const wordsOf = (text: string) =>
  text
    .slice(0, 100)
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");

const keyOf = (words: readonly string[]) => [...words].sort().join(" ");

/** Mean likeness of the words asked for, each to the word that it is likest to; 1 when all of them are there. */
function likenessOf(asked: readonly string[], words: readonly string[]): number {
  if (asked.length === 0) return 0;
  let sum = 0;
  for (const word of asked) sum += Math.max(...words.map((other) => sameBeginning(word, other)));
  return sum / asked.length - WORD_TOO_MANY * Math.max(0, words.length - asked.length);
}

/** Share of two words that is one beginning. */
function sameBeginning(one: string, other: string): number {
  let same = 0;
  while (same < one.length && one[same] === other[same]) same += 1;
  if (same === one.length && same === other.length) return 1;
  return same < LEAST_BEGINNING ? 0 : (2 * same) / (one.length + other.length);
}
