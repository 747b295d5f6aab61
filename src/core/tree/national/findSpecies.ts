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

/** All species that bear a name or a code: none, one, or several where a name is shared. */
export function speciesNamed(text: string): readonly Species[] {
  const { byCode, byName } = finder();
  const coded = byCode.get(text.trim());
  return coded ? [coded] : byName.bearing(text);
}

/** "Did you mean red maple?", or nothing when no name is like the text. */
export const likeSpecies = (text: string): string =>
  didYouMean(
    finder()
      .byName.like(text)
      .map(({ name }) => name),
  );

/**
 * The species that a common name or an inventory code means.
 *
 * @throws OutOfRange when there is none, with the names that are most like it
 * @throws InvalidInput when a name is shared by several species
 */
export function findSpecies(text: string): Species {
  const [found, ...others] = speciesNamed(text);
  if (found && others.length === 0) return found;
  const quoted = `"${text.slice(0, 60)}"`;
  if (found) throw new InvalidInput(`${quoted} ${shared([found, ...others])}`);
  const hint = likeSpecies(text);
  throw new OutOfRange(
    `${quoted} is not in your species list. Fix the code or add it on Setup.${hint === "" ? "" : ` ${hint}`}`,
  );
}

/** What is said after a name that several species bear. */
export const shared = (species: readonly Species[]): string =>
  `is the name of more than one species. Use a code instead: ${species.map(({ code }) => code).join(" and ")}.`;
