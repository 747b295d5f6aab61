import { scientificNames as list } from "../../reference/national/scientificNames";
import { allSpecies, type Species } from "./species";

let read: ReadonlyMap<Species, string> | undefined;

/** The scientific name of every species of the list, such as "Acer rubrum". */
export function scientificNames(): ReadonlyMap<Species, string> {
  read ??= new Map(pairs());
  return read;
}

function* pairs(): Generator<readonly [Species, string]> {
  const names = list.lines
    .trim()
    .split("\n")
    .flatMap((line) => {
      const [genus = "", kinds = ""] = line.split(": ");
      return kinds.split(", ").map((kind) => `${genus} ${kind}`);
    });
  for (const [place, species] of allSpecies().entries()) yield [species, names[place] as string];
}
