import type { Choice } from "../../basis/choices";
import { OutOfRange } from "../../basis/problem";
import type { Source } from "../../basis/source";
import { nationalSpecies } from "../../reference/national/sources";
import { barkRatio, sources as bark } from "./barkRatio";
import { listed, WATER } from "./dryWood";
import type { Species } from "./species";

/** Something that the national list tells of a species. */
export interface SpeciesFact extends Choice {
  of(species: Species): string | number;
}

/** Species groups of the national equations, from 1 on. */
const GROUPS = [
  "cedar and larch",
  "Douglas-fir",
  "fir and hemlock",
  "pine",
  "spruce",
  "aspen, alder, cottonwood and willow",
  "soft maple and birch",
  "mixed hardwood",
  "hard maple, oak, hickory and beech",
  "woodland juniper, oak and mesquite",
] as const;

export const commonName: SpeciesFact = {
  title: "Name",
  aliases: ["Common name"],
  of: ({ name }) => name,
};

export const speciesFacts: readonly SpeciesFact[] = [
  commonName,
  { title: "FIA code", aliases: ["Code"], of: ({ code }) => code },
  { title: "Kind", of: ({ softwood }) => (softwood ? "softwood" : "hardwood") },
  {
    title: "Group",
    of: ({ group, name }) => GROUPS[group - 1] ?? none("group", name),
  },
  {
    title: "Specific gravity",
    aliases: ["Gravity"],
    of: (species) => listed(species, "woodGravity", "wood density"),
  },
  {
    title: "Green moisture pct",
    aliases: ["Green moisture"],
    of: (species) => listed(species, "greenMoisture", "green moisture"),
  },
  { title: "Green lb per ft3", aliases: ["Green density"], of: greenDensity },
  {
    title: "Bark ratio",
    of: (species) => barkRatio(species) ?? none("bark ratio", species.name),
  },
];

/** Weight of a cubic foot of fresh wood: oven-dry weight, and the water that each pound of it holds. [lb/ft3] */
function greenDensity(species: Species): number {
  const dry = WATER * listed(species, "woodGravity", "wood density");
  return dry * (1 + listed(species, "greenMoisture", "green moisture") / 100);
}

function none(what: string, name: string): never {
  throw new OutOfRange(`The national species list has no ${what} for ${name}.`);
}

export const sources: readonly Source[] = [nationalSpecies, ...bark];
