import { didYouMean, NameMatch } from "../../basis/nameMatch";
import { InvalidInput, OutOfRange } from "../../basis/problem";
import { allSpecies, type Species } from "./species";

interface Finder {
  readonly byCode: ReadonlyMap<string, Species>;
  readonly byName: NameMatch<Species>;
}

let made: Finder | undefined;

function finder(): Finder {
  made ??= {
    byCode: new Map(allSpecies().map((species) => [String(species.code), species])),
    byName: new NameMatch(allSpecies(), ({ name }) => [name]),
  };
  return made;
}

/**
 * The species that a common name or an inventory code means.
 *
 * @throws OutOfRange when there is none, with the names that are most like it
 * @throws InvalidInput when a name is shared by several species
 */
export function findSpecies(text: string): Species {
  const { byCode, byName } = finder();
  const coded = byCode.get(text.trim());
  if (coded) return coded;
  const [found, ...others] = byName.bearing(text);
  if (found && others.length === 0) return found;
  const quoted = `"${text.slice(0, 60)}"`;
  if (found) {
    const codes = [found, ...others].map(({ code }) => code).join(" and ");
    throw new InvalidInput(`${quoted} is the name of more than one species. Use a code instead: ${codes}.`);
  }
  const hint = didYouMean(byName.like(text).map(({ name }) => name));
  throw new OutOfRange(
    `${quoted} is not in your species list. Fix the code or add it on Setup.${hint === "" ? "" : ` ${hint}`}`,
  );
}
