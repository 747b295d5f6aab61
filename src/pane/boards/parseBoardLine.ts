import type { ParsedEntry } from "../entry/entryKind";
import { askOfComma, splitNote, takeMark, takeNumber } from "../entry/lineWords";
import type { BoardLine } from "./boardLine";

/**
 * Reads a line of boards: thickness width length [xPIECES] [/note], with spaces or commas between them.
 *
 * Numbers are written "1.25", "1 1/4" or in quarters, "5/4". Anything legible is a board, however odd: doubts are
 * raised elsewhere.
 */
export function parseBoardLine(text: string): ParsedEntry<BoardLine> {
  const { words, note } = splitNote(text);
  if (words.length === 0)
    return note === "" ? { kind: "blank" } : unclear("A note belongs to a board. Type the board first.");
  const comma = askOfComma(text);
  if (comma !== "") return unclear(comma);

  const numbers: number[] = [];
  let pieces: number | undefined;
  while (words.length > 0) {
    const mark = takeMark(words, "x");
    if (mark) {
      if (pieces !== undefined) return unclear("x is given twice. Keep one.");
      if (!(mark.amount >= 1 && Number.isInteger(mark.amount)))
        return unclear(`The pieces should be a whole number, like x4. You have "${mark.word}".`);
      pieces = mark.amount;
      continue;
    }
    const value = takeNumber(words);
    if (value === undefined)
      return unclear(`"${words[0]}" is not a number. Type thickness, width and length, like 5/4 6 12 x4.`);
    numbers.push(value);
  }

  const [thickness, width, length, left] = numbers;
  if (thickness === undefined) return unclear("Type thickness, width and length first, like 5/4 6 12.");
  if (width === undefined) return unclear(`Type the width in inches after ${thickness} in.`);
  if (length === undefined) return unclear(`Type the length in feet after ${thickness} x ${width} in.`);
  if (thickness === 0 || width === 0 || length === 0) return unclear("A board's measures should be above 0.");
  if (left !== undefined) return unclear(`A line holds thickness, width and length; ${left} is left over.`);
  return { kind: "entry", entry: { thickness, width, length, pieces: pieces ?? 1, note } };
}

const unclear = (because: string): ParsedEntry<BoardLine> => ({ kind: "unclear", because });
