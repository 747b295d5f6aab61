import type { KnownSpecies } from "../tally/tallyTree";

/** Reads a list of species, one a line: its code, then its name; a line with a code alone is its own name. */
export function speciesList(text: string): readonly KnownSpecies[] {
  const seen = new Set<string>();
  return text.split("\n").flatMap((line) => {
    const [code = "", ...name] = line.trim().split(/[\s,;]+/);
    if (code === "" || seen.has(code.toLowerCase())) return [];
    seen.add(code.toLowerCase());
    return [{ code, name: name.join(" ") || code }];
  });
}
