import type { KnownSpecies } from "../tally/tallyTree";

/** What lines of every kind are made of: words parted by spaces or commas, numbers as people write them, a note. */

/** A note starts at a slash with nothing in front of it, so that 3/10 stays a fraction. */
const NOTE = /(?<![^\s,])\//;

/** The words of a line and, apart from them, its note. */
export function splitNote(text: string): { readonly words: string[]; readonly note: string } {
  const [line = "", ...note] = text.split(NOTE);
  return {
    words: line.split(/[\s,]+/).filter((word) => word !== ""),
    note: note.join("/").trim().replace(/\s+/g, " "),
  };
}

/**
 * Asks about "12,5", which may be one number or two. A comma parts words as a space does, but where the words of a line
 * are parted by spaces, or there is but one, two bare numbers around a comma are more likely a decimal; "" for no doubt.
 */
export function askOfComma(text: string): string {
  const [line = ""] = text.split(NOTE);
  const odd = line.split(/\s+/).find((word) => /^\d+,\d+,?$/.test(word));
  if (odd === undefined) return "";
  const [whole = "", part = ""] = odd.split(",");
  return `Is ${whole},${part} one number? Then type ${whole}.${part}. Two numbers need a space: ${whole} ${part}.`;
}

/** Takes the words of a species off the front: a known code or name, or else one word; undefined when there is none. */
export function takeSpecies(words: string[], known: readonly KnownSpecies[], isMark: RegExp): string | undefined {
  for (let taken = Math.min(words.length, MOST_WORDS_IN_A_NAME); taken > 0; taken -= 1) {
    const said = plain(words.slice(0, taken).join(" "));
    const found = known.find(({ code, name }) => plain(code) === said || plain(name) === said);
    if (!found) continue;
    words.splice(0, taken);
    return found.code;
  }
  const first = words[0] ?? "";
  return /^\p{L}/u.test(first) && !isMark.test(first) ? words.shift() : undefined;
}

const MOST_WORDS_IN_A_NAME = 4;

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[\s\-_]+/g, " ")
    .trim();

/**
 * Takes a mark such as x2 or c10 off the front: a letter and a number.
 * Undefined when the first word is none; NaN for an amount that is no number.
 */
export function takeMark(
  words: string[],
  letters: string,
): { readonly letter: string; readonly amount: number; readonly word: string } | undefined {
  const [word, letter, amount = ""] = new RegExp(`^([${letters}])([\\d.].*)?$`, "i").exec(words[0] ?? "") ?? [];
  if (word === undefined || letter === undefined) return undefined;
  words.shift();
  return { letter: letter.toLowerCase(), amount: decimal(amount) ?? NaN, word };
}

/** Takes a number off the front: 14.3, 3/10, or 14 with the 3/10 that follows it; undefined, and nothing taken, when there is none. */
export function takeNumber(words: string[]): number | undefined {
  const word = words[0] ?? "";
  const whole = decimal(word);
  const value = whole ?? fraction(word);
  if (value === undefined) return undefined;
  words.shift();
  const part = whole !== undefined && Number.isInteger(whole) ? fraction(words[0] ?? "") : undefined;
  if (part === undefined || part >= 1) return value; // 1 5/4 is two numbers
  words.shift();
  // Without the trailing digits of binary fractions: 14 and 3/10 are 14.3.
  return Number((value + part).toFixed(6));
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
