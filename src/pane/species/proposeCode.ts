import type { KnownSpecies } from "../tally/tallyTree";

/** Letters with a number behind them are marks of the tally line, and so no codes: x2, c10, h85. */
const MARKS = /^[xch]$/i;

/** A short code for a species that no other has: the first letters of its words, longer where that is taken. */
export function proposeCode(name: string, list: readonly KnownSpecies[]): string {
  const taken = new Set(list.map(({ code }) => code.toLowerCase()));
  const words = name
    .toLowerCase()
    .replace(/\bspp\b\.?/g, "")
    .split(/[^a-z]+/)
    .filter((word) => word !== "");
  const first = words[0] ?? "sp";
  const initials = words.length > 1 ? words.map((word) => word.charAt(0)).join("") : first.slice(0, 2);
  const last = words.at(-1) ?? first;
  const longer = Array.from({ length: last.length }, (_, i) => initials + last.slice(1, i + 2));
  const numbered = Array.from(
    { length: list.length + 1 },
    (_, i) => `${initials}${"abcdefghijklmnopqrstuvwxyz".charAt(i)}`,
  );
  return [initials, ...longer, ...numbered].find((code) => !taken.has(code) && !MARKS.test(code)) ?? name;
}
