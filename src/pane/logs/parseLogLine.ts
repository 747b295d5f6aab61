import type { ParsedEntry } from "../entry/entryKind";
import { askOfComma, splitNote, takeMark, takeNumber, takeSpecies } from "../entry/lineWords";
import type { KnownSpecies } from "../tally/tallyTree";
import type { LogLine } from "./logLine";

export interface LogContext {
  readonly species: readonly KnownSpecies[];
  /** The species of the line before, which a line that starts with a number repeats. */
  readonly lastSpecies?: string | undefined;
}

/**
 * Reads a line of a scale sheet: species small-end length [LARGE-END] [sSWEEP] [dDEDUCTION] [/note], with spaces or
 * commas between them.
 *
 * Anything legible is a log, however odd: doubts are raised elsewhere.
 */
export function parseLogLine(text: string, { species, lastSpecies }: LogContext): ParsedEntry<LogLine> {
  const { words, note } = splitNote(text);
  if (words.length === 0)
    return note === "" ? { kind: "blank" } : unclear("A note belongs to a log. Type the log first.");
  const comma = askOfComma(text);
  if (comma !== "") return unclear(comma);

  const name = takeSpecies(words, species, /^[ds][\d.]+$/i) ?? lastSpecies;
  if (name === undefined) return unclear("Start with a species, like wo 14 16. After that a number alone repeats it.");

  const numbers: number[] = [];
  const marks: Marks = {};
  while (words.length > 0) {
    const wrong = takeLogMark(words, marks);
    if (wrong === "") continue;
    if (wrong !== undefined) return unclear(wrong);
    const value = takeNumber(words);
    if (value === undefined)
      return unclear(`"${words[0]}" is not a number. Type species, small end and length, like wo 14 16.`);
    numbers.push(value);
  }

  const [smallEnd, length, largeEnd, left] = numbers;
  if (smallEnd === undefined) return unclear(`Type the small end in inches after ${name}.`);
  if (length === undefined) return unclear(`Type the length in feet after ${smallEnd} in.`);
  if (smallEnd === 0) return unclear("The small end should be above 0 in.");
  if (length === 0) return unclear("The length should be above 0 ft.");
  if (largeEnd === 0) return unclear("The large end should be above 0 in.");
  if (left !== undefined) return unclear(`A line holds small end, length and large end; ${left} is left over.`);
  return {
    kind: "entry",
    entry: {
      species: name,
      smallEnd,
      length,
      largeEnd: largeEnd ?? null,
      sweep: marks.s ?? null,
      deduction: marks.d ?? null,
      note,
    },
  };
}

interface Marks {
  /** Sweep. [in] */
  s?: number;
  /** Deduction. [%] */
  d?: number;
}

/** Takes s1.5 or d5 off the front. Gives a sentence when it is wrong, "" when it was taken, undefined when it is neither. */
function takeLogMark(words: string[], marks: Marks): string | undefined {
  const mark = takeMark(words, "ds");
  if (!mark) return undefined;
  const letter = mark.letter as "d" | "s";
  if (marks[letter] !== undefined) return `${letter} is given twice. Keep one.`;
  if (letter === "d" && !(mark.amount >= 0 && mark.amount <= 100))
    return `The deduction should be 0 to 100 percent, like d5. You have "${mark.word}".`;
  if (letter === "s" && !(mark.amount >= 0))
    return `The sweep should be a number of inches, like s1.5. You have "${mark.word}".`;
  marks[letter] = mark.amount;
  return "";
}

const unclear = (because: string): ParsedEntry<LogLine> => ({ kind: "unclear", because });
