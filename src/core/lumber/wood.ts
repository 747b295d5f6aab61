import { didYouMean, NameMatch } from "../basis/nameMatch";
import { OutOfRange } from "../basis/problem";
import type { Source, Standing } from "../basis/source";
import { percent, type Percent } from "../basis/units";
import { woodProperties } from "../reference/woodProperties";

/** The wood of one species. */
export interface Wood {
  /** Number of the species in the Forest Service's inventory. */
  readonly code: number;
  readonly name: string;
  readonly scientific: string;
  /** Ovendry weight over green volume, against water. */
  readonly gravity: number;
  /** Mean moisture content of the green wood. [%] */
  readonly green: Percent;
  /** Shrinkage from green to ovendry, across the growth rings and along them. [% of the green size] */
  readonly radial: Percent;
  readonly tangential: Percent;
  /** Whether these two were read in print. */
  readonly shrinkage: Standing;
}

export const woods: readonly Wood[] = woodProperties.rows.map(
  ([code, name, scientific, gravity, green, radial, tangential, shrinkage]) => ({
    code,
    name,
    scientific,
    gravity,
    green: percent(green),
    radial: percent(radial),
    tangential: percent(tangential),
    shrinkage,
  }),
);

const byCode = new Map(woods.map((wood) => [String(wood.code), wood]));
const byName = new NameMatch(woods, ({ name, scientific }) => [name, scientific]);

/**
 * The wood of the species that a text names: a common name, a scientific name or an inventory code. Case, hyphens and
 * the order of words make no difference.
 *
 * @throws OutOfRange naming those that are most like it when the table has none
 */
export function findWood(species: string): Wood {
  const found = byCode.get(species.trim()) ?? byName.bearing(species)[0];
  if (found) return found;
  const hint = didYouMean(byName.like(species, 4).map(({ name }) => name));
  const advice = "Give a common name such as northern red oak, a scientific name, or an inventory code such as 833.";
  throw new OutOfRange(`"${species.slice(0, 60)}" is not in the wood table. ${hint === "" ? advice : hint}`);
}

/** Where the table comes from, the species named whose shrinkage is from memory. */
export const woodSources: readonly Source[] = woodProperties.sources.map((source: Source) => {
  if (source.standing !== "from memory") return source;
  const recalled = woods.filter(({ shrinkage }) => shrinkage === "from memory").map(({ name }) => name);
  return { ...source, where: `${source.where}: ${recalled.join(", ")}` };
});
