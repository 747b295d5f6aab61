import { InvalidInput } from "../../core/basis/problem";

export const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi;

/** A comma within a number, where blanks part the numbers. */
const COMMA_INSIDE = /\d,\d{3}(?!\d).*\s[+-]?\d|\d\s.*\d,\d{3}(?!\d)/;

/**
 * The two numbers of a line, parted by a comma, a tab, a semicolon or blanks. Of three, the first is the number of the
 * corner and has to count up with the lines; words are passed over.
 *
 * @param ordinal which corner this is, counted from 1
 * @throws InvalidInput naming the line
 */
export function numberPair(line: string, lineNumber: number, ordinal: number, what: string): readonly [number, number] {
  const refuse = (why: string) =>
    new InvalidInput(`Line ${lineNumber} needs two numbers, ${what}. It has "${line.slice(0, 40)}".${why}`);
  if (COMMA_INSIDE.test(line) && !/,\s/.test(line)) throw refuse(" Leave the comma out of 1,320.");
  const cells = line.split(/[\t;]|,\s*|\s+/).filter((cell) => cell !== "");
  const numbers = cells.flatMap((cell) => (cell.match(NUMBER)?.join("") === cell ? [Number(cell)] : []));
  const [first, second, third] = numbers;
  if (first === undefined || second === undefined || numbers.length > 3) throw refuse("");
  if (third === undefined) return [first, second];
  if (first !== ordinal) throw refuse(" A first number of three should count the corners: 1, 2, 3.");
  return [second, third];
}
