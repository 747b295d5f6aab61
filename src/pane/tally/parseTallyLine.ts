import { askOfComma, splitNote, takeMark, takeNumber, takeSpecies } from "../entry/lineWords";
import type { KnownSpecies, TallyTree } from "./tallyTree";

export interface TallyContext {
  readonly species: readonly KnownSpecies[];
  /** The species of the line before, which a line that starts with a number repeats. */
  readonly lastSpecies?: string | undefined;
}

/** What a typed line means: nothing yet, a tree that can be saved, or what is missing to make it one. */
export type ParsedLine =
  | { readonly kind: "blank" }
  | { readonly kind: "tree"; readonly tree: TallyTree }
  | { readonly kind: "unclear"; readonly because: string };

/**
 * Reads a tally line: species dbh logs [xCOUNT] [cCULL] [/note], with spaces or commas between them.
 *
 * Numbers are written "14.3" or "14 3/10". A line that starts with a number repeats the last species. Logs may be
 * left out when they were not measured. Anything legible is a tree, however odd: doubts are raised elsewhere.
 */
export function parseTallyLine(text: string, { species, lastSpecies }: TallyContext): ParsedLine {
  const { words, note } = splitNote(text);
  if (words.length === 0)
    return note === "" ? { kind: "blank" } : unclear("A note belongs to a tree. Type the tree first.");
  const comma = askOfComma(text);
  if (comma !== "") return unclear(comma);

  const name = takeSpecies(words, species, /^[xc]\d+$/i) ?? lastSpecies;
  if (name === undefined)
    return unclear("Start with a species, like ro 14.3 2.5. After that a number alone repeats it.");

  const numbers: number[] = [];
  const marks: { x?: number; c?: number } = {};
  while (words.length > 0) {
    const problem = takeCount(words, marks) ?? takeMeasure(words, numbers);
    if (problem) return unclear(problem);
  }

  const [dbh, logs, left] = numbers;
  if (dbh === undefined) return unclear(`Type the DBH in inches after ${name}.`);
  if (dbh === 0) return unclear("The DBH should be above 0 in.");
  if (left !== undefined) return unclear(`A line holds one DBH and one number of logs; ${left} is left over.`);
  const tree = { species: name, dbh, logs: logs ?? null, count: marks.x ?? 1, cull: marks.c ?? null, note };
  return { kind: "tree", tree };
}

const unclear = (because: string): ParsedLine => ({ kind: "unclear", because });

/** Takes x2 or c10 off the front. Gives a sentence when it is wrong, "" when it was taken, undefined when it is neither. */
function takeCount(words: string[], marks: { x?: number; c?: number }): string | undefined {
  const mark = takeMark(words, "xc");
  if (!mark) return undefined;
  const letter = mark.letter as "x" | "c";
  if (marks[letter] !== undefined) return `${letter} is given twice. Keep one.`;
  if (letter === "x" && !(mark.amount > 0)) {
    return `The count should be a number above 0, like x2. You have "${mark.word}".`;
  }
  if (!(mark.amount >= 0 && (letter === "x" || mark.amount <= 100))) {
    return `Cull should be 0 to 100 percent, like c10. You have "${mark.word}".`;
  }
  marks[letter] = mark.amount;
  return "";
}

/** Gives a sentence when the next word is no number. */
function takeMeasure(words: string[], numbers: number[]): string {
  const value = takeNumber(words);
  if (value === undefined) return `"${words[0]}" is not a number. Type species, DBH and logs, like ro 14.3 2.5.`;
  numbers.push(value);
  return "";
}
