import type { KnownSpecies } from "../tally/tallyTree";

/**
 * Reads a list of species, one a line: its code, its name, and its number in the national forest inventory where the
 * name alone does not tell it; a line with a code alone is its own name.
 */
export function speciesList(text: string): readonly KnownSpecies[] {
  const seen = new Set<string>();
  return text.split("\n").flatMap((line) => {
    const [code = "", ...words] = line.trim().split(/[\s,;]+/);
    if (code === "" || seen.has(code.toLowerCase())) return [];
    seen.add(code.toLowerCase());
    const fia = /^\d{2,4}$/.test(words.at(-1) ?? "") ? Number(words.pop()) : undefined;
    return [{ code, name: words.join(" ") || code, ...(fia !== undefined && { fia }) }];
  });
}

/** The line of a species in such a list. */
export const speciesLine = ({ code, name, fia }: KnownSpecies): string =>
  [code, name, fia === undefined ? "" : String(fia)].filter((part) => part !== "").join(" ");
