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
 * Reads a line of a scale sheet: species small-end length [LARGE-END] [dDEDUCTION] [/note], with spaces or commas
 * between them.
 *
 * Anything legible is a log, however odd: doubts are raised elsewhere.
 */
export function parseLogLine(text: string, { species, lastSpecies }: LogContext): ParsedEntry<LogLine> {
  const { words, note } = splitNote(text);
  if (words.length === 0)
    return note === "" ? { kind: "blank" } : unclear("A note belongs to a log. Type the log first.");
  const comma = askOfComma(text);
  if (comma !== "") return unclear(comma);

  const name = takeSpecies(words, species, /^d[\d.]+$/i) ?? lastSpecies;
  if (name === undefined) return unclear("Start with a species, like wo 14 16. After that a number alone repeats it.");

  const numbers: number[] = [];
  let deduction: number | undefined;
  while (words.length > 0) {
    const mark = takeMark(words, "d");
    if (mark) {
      if (deduction !== undefined) return unclear("d is given twice. Keep one.");
      if (!(mark.amount >= 0 && mark.amount <= 100))
        return unclear(`The deduction should be 0 to 100 percent, like d5. You have "${mark.word}".`);
      deduction = mark.amount;
      continue;
    }
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
    entry: { species: name, smallEnd, length, largeEnd: largeEnd ?? null, deduction: deduction ?? null, note },
  };
}

const unclear = (because: string): ParsedEntry<LogLine> => ({ kind: "unclear", because });
