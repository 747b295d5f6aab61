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
  const { line, note } = splitNote(text);
  const words = line.split(/[\s,]+/).filter((word) => word !== "");
  if (words.length === 0)
    return note === "" ? { kind: "blank" } : unclear("A note belongs to a tree. Type the tree first.");

  const name = takeSpecies(words, species) ?? lastSpecies;
  if (name === undefined)
    return unclear("Start with a species, like ro 14.3 2.5. After that a number alone repeats it.");

  const numbers: number[] = [];
  const marks: { x?: number; c?: number } = {};
  while (words.length > 0) {
    const problem = takeMark(words, marks) ?? takeNumber(words, numbers);
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

/** A note starts at a slash with nothing in front of it, so that 3/10 stays a fraction. */
function splitNote(text: string): { readonly line: string; readonly note: string } {
  const [line = "", ...note] = text.split(/(?<![^\s,])\//);
  return { line, note: note.join("/").trim().replace(/\s+/g, " ") };
}

/** Takes the words of a species off the front: a known code or name, or else one word; undefined when there is none. */
function takeSpecies(words: string[], known: readonly KnownSpecies[]): string | undefined {
  for (let taken = Math.min(words.length, MOST_WORDS_IN_A_NAME); taken > 0; taken -= 1) {
    const said = plain(words.slice(0, taken).join(" "));
    const found = known.find(({ code, name }) => plain(code) === said || plain(name) === said);
    if (!found) continue;
    words.splice(0, taken);
    return found.code;
  }
  const first = words[0] ?? "";
  return /^\p{L}/u.test(first) && !/^[xc]\d+$/i.test(first) ? words.shift() : undefined;
}

const MOST_WORDS_IN_A_NAME = 4;

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[\s\-_]+/g, " ")
    .trim();

/** Takes x2 or c10 off the front. Gives a sentence when it is wrong, "" when it was taken, undefined when it is neither. */
function takeMark(words: string[], marks: { x?: number; c?: number }): string | undefined {
  const [, letter, amount = ""] = /^([xc])([\d.].*)?$/i.exec(words[0] ?? "") ?? [];
  if (letter === undefined) return undefined;
  const word = words.shift();
  const mark = letter.toLowerCase() as "x" | "c";
  if (marks[mark] !== undefined) return `${mark} is given twice. Keep one.`;
  const value = decimal(amount);
  if (mark === "x" && !(value !== undefined && value > 0)) {
    return `The count should be a number above 0, like x2. You have "${word}".`;
  }
  if (value === undefined || (mark === "c" && value > 100)) {
    return `Cull should be 0 to 100 percent, like c10. You have "${word}".`;
  }
  marks[mark] = value;
  return "";
}

/** Takes a number off the front: 14.3, 3/10, or 14 with the 3/10 that follows it. Gives a sentence when it is none. */
function takeNumber(words: string[], numbers: number[]): string {
  const word = words.shift() ?? "";
  const whole = decimal(word);
  const value = whole ?? fraction(word);
  if (value === undefined) return `"${word}" is not a number. Type species, DBH and logs, like ro 14.3 2.5.`;
  const part = whole !== undefined && Number.isInteger(whole) ? fraction(words[0] ?? "") : undefined;
  if (part !== undefined) words.shift();
  // Without the trailing digits of binary fractions: 14 and 3/10 are 14.3.
  numbers.push(part === undefined ? value : Number((value + part).toFixed(6)));
  return "";
}

/** No tape reads further than this; longer strings of digits are a stuck key. */
const MOST_DIGITS = 6;

function decimal(word: string): number | undefined {
  const parts = /^(\d*)\.?(\d*)$/.exec(word);
  if (!parts || !/\d/.test(word) || parts.slice(1).some((digits) => digits.length > MOST_DIGITS)) return undefined;
  return Number(word);
}

function fraction(word: string): number | undefined {
  const [, top = "", bottom = ""] = /^(\d{1,3})\/(\d{1,3})$/.exec(word) ?? [];
  return Number(bottom) > 0 ? Number(top) / Number(bottom) : undefined;
}
