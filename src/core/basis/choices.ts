import { InvalidInput } from "./problem";

/** One entry of a menu: what the user reads, and other texts that mean the same. */
export interface Choice {
  readonly title: string;
  readonly aliases?: readonly string[];
}

/** Case, spaces, hyphens and inch marks make no difference to a text with a fixed list. */
const bare = (text: string) => text.toLowerCase().replace(/[\s\-–—_"″'′]|inch(es)?\b|\bin\b\.?/g, "");

/** The entry of a list that a text means, if there is one. */
export function choiceNamed<T extends Choice>(text: unknown, choices: readonly T[]): T | undefined {
  const wanted = bare(textOf(text));
  return choices.find(({ title, aliases = [] }) => [title, ...aliases].some((name) => bare(name) === wanted));
}

/**
 * Finds the entry of a fixed list that a text means.
 *
 * @throws InvalidInput naming the list when none is meant
 */
export function chosen<T extends Choice>(what: string, text: unknown, choices: readonly T[]): T {
  const found = choiceNamed(text, choices);
  if (found) return found;
  const list = choices.map((choice) => choice.title).join(", ");
  throw new InvalidInput(`${what} should be one of: ${list}. You have ${quoted(text)}.`);
}

/** What was typed, as a sentence quotes it. */
export function quoted(text: unknown): string {
  const given = textOf(text);
  return bare(given) === "" ? "a blank" : `"${given.slice(0, 60)}"`;
}

/** A cell's contents as text; what is neither text, number nor truth value counts as blank. */
export function textOf(cell: unknown): string {
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  return typeof cell === "string" || typeof cell === "boolean" ? String(cell).trim() : "";
}
