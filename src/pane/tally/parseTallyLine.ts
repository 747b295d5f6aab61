import { askOfComma, splitNote, takeMark, takeNumber, takeSpecies } from "../entry/lineWords";
import { notListed } from "./notListed";
import type { KnownSpecies, TallyTree } from "./tallyTree";

export interface TallyContext {
  readonly species: readonly KnownSpecies[];
  /** The species of the line before, which a line that starts with a number repeats. */
  readonly lastSpecies?: string | undefined;
  /** What a number behind the DBH means when it does not say so itself. */
  readonly heightIs?: "logs" | "feet" | undefined;
}

/** What a typed line means: nothing yet, a tree that can be saved, or what is missing to make it one. */
export type ParsedLine =
  | { readonly kind: "blank" }
  | { readonly kind: "tree"; readonly tree: TallyTree }
  | { readonly kind: "unclear"; readonly because: string };

/** More than this is no number of 16-ft logs, and less is no total height in feet. */
const MOST_LOGS = 10;

/**
 * Reads a tally line: species dbh logs [hHEIGHT] [xCOUNT] [cCULL] [@DISTANCE] [/note], with spaces or commas between them.
 *
 * Numbers are written "14.3" or "14 3/10". A line that starts with a number repeats the last species. The total height
 * is written h85, 85ft or 85 ft; logs may be written 2.5logs. A bare number behind the DBH is logs, or feet where
 * Setup says that total height was measured; one that cannot be what it would be taken for is asked about. Heights may
 * be left out when they were not measured. Anything legible is a tree, however odd: doubts are raised elsewhere.
 */
export function parseTallyLine(text: string, { species, lastSpecies, heightIs = "logs" }: TallyContext): ParsedLine {
  const { words, note } = splitNote(text);
  if (words.length === 0)
    return note === "" ? { kind: "blank" } : unclear("A note belongs to a tree. Type the tree first.");
  const comma = askOfComma(text);
  if (comma !== "") return unclear(comma);

  const name = takeSpecies(words, species, /^[xch][\d.]+$/i) ?? lastSpecies;
  if (name === undefined)
    return unclear("Start with a species, like ro 14.3 2.5. After that a number alone repeats it.");

  if (!species.some(({ code }) => code === name) && startsWithLetter(words[0])) {
    const more = words.slice(0, words.findIndex((word) => !startsWithLetter(word)) >>> 0);
    return unclear(notListed([name, ...more].join(" "), species));
  }

  const numbers: number[] = [];
  const marks: Marks = {};
  while (words.length > 0) {
    const problem = takeCount(words, marks) ?? takeHeight(words, marks) ?? takeMeasure(words, numbers);
    if (problem) return unclear(problem);
  }

  const [dbh, bare, left] = numbers;
  if (dbh === undefined) return unclear(`Type the DBH in inches after ${name}.`);
  if (dbh === 0) return unclear("The DBH should be above 0 in.");
  if (left !== undefined) return unclear(`A line holds one DBH and one number of logs; ${left} is left over.`);
  if (bare !== undefined) {
    const problem = takeBare(bare, heightIs, marks);
    if (problem) return unclear(problem);
  }
  const { x: count = 1, c: cull = null, logs = null, h: height = null, "@": distance } = marks;
  const tree = { species: name, dbh, logs, height, count, cull, note };
  return { kind: "tree", tree: distance === undefined ? tree : { ...tree, distance } };
}

/** A word of a name rather than a mark such as x2. */
const startsWithLetter = (word: string | undefined) =>
  word !== undefined && /^\p{L}/u.test(word) && !/^[xch]([\d.]|$)/i.test(word);

interface Marks {
  x?: number;
  c?: number;
  /** How far the tree stands from the middle of the point. [ft] */
  "@"?: number;
  /** Total height. [ft] */
  h?: number;
  logs?: number;
}

const unclear = (because: string): ParsedLine => ({ kind: "unclear", because });

/** Takes x2, c10 or @27.5 off the front. Gives a sentence when it is wrong, "" when it was taken, undefined when it is neither. */
function takeCount(words: string[], marks: Marks): string | undefined {
  const mark = takeMark(words, "xc@");
  if (!mark) return undefined;
  const letter = mark.letter as "x" | "c" | "@";
  if (marks[letter] !== undefined) return `${letter} is given twice. Keep one.`;
  if (letter === "x" && !(mark.amount > 0)) {
    return `The count should be a number above 0, like x2. You have "${mark.word}".`;
  }
  if (letter === "@" && !(mark.amount > 0)) {
    return `The taped distance should be a number of feet above 0, like @27.5. You have "${mark.word}".`;
  }
  if (letter === "c" && !(mark.amount >= 0 && mark.amount <= 100)) {
    return `Cull should be 0 to 100 percent, like c10. You have "${mark.word}".`;
  }
  marks[letter] = mark.amount;
  return "";
}

/** Takes a height that says itself what it is: h85, 85ft, 85 ft, 85' or 2.5logs, 2.5 logs. As takeCount answers. */
function takeHeight(words: string[], marks: Marks): string | undefined {
  const mark = takeMark(words, "h");
  if (mark) return putHeight("h", mark.amount, `like h85. You have "${mark.word}"`, marks);
  const [first = "", second = ""] = words;
  const joined = /^([\d.]+)(ft|feet|['’′]|logs?)$/i.exec(first);
  const parted = joined ? undefined : /^(ft|feet|['’′]|logs?)$/i.exec(second);
  const [amount, unit] = joined ? [joined[1], joined[2]] : parted ? [first, parted[1]] : [];
  const value = amount === undefined ? undefined : takeNumber([amount]);
  if (value === undefined || unit === undefined) return undefined;
  words.splice(0, joined ? 1 : 2);
  const what = /^log/i.test(unit) ? "logs" : "h";
  return putHeight(what, value, what === "h" ? "like 85 ft" : "like 2.5 logs", marks);
}

function putHeight(what: "h" | "logs", amount: number, like: string, marks: Marks): string {
  const named = what === "h" ? "total height" : "number of logs";
  if (marks[what] !== undefined) return `The ${named} is given twice. Keep one.`;
  if (!(amount >= 0) || (what === "h" && amount === 0)) {
    return `The ${named} should be a number above 0${what === "h" ? " in feet" : ""}, ${like}.`;
  }
  marks[what] = amount;
  return "";
}

/** A number behind the DBH that does not say what it is. Gives a sentence when it cannot be what it is taken for. */
function takeBare(value: number, heightIs: "logs" | "feet", marks: Marks): string {
  if (heightIs === "logs") {
    if (marks.logs !== undefined) return `The number of logs is given twice; ${value} is left over.`;
    if (value > MOST_LOGS)
      return `${value} is too much for 16-ft logs. For a total height of ${value} ft type h${value}.`;
    marks.logs = value;
    return "";
  }
  if (marks.h !== undefined) return `The total height is given twice; ${value} is left over.`;
  if (value <= MOST_LOGS) {
    return `Setup says total height is measured, and ${value} ft is too little for a tree. For logs type ${value}logs.`;
  }
  marks.h = value;
  return "";
}

/** Gives a sentence when the next word is no number. */
function takeMeasure(words: string[], numbers: number[]): string {
  const value = takeNumber(words);
  if (value === undefined) return `"${words[0]}" is not a number. Type species, DBH and logs, like ro 14.3 2.5.`;
  numbers.push(value);
  return "";
}
