import type { Choice } from "../../basis/choices";
import { cubicFeet, type CubicFeet } from "../../basis/units";
import type { HeightTree, StemEquations } from "./stemEquations";
import { merchantableWood, sawlogWood, stemSections, type Condition, type StemSections } from "./stemSections";

/** A part of the stem whose volume can be asked for. */
export interface StemPart extends Choice {
  /** In a sound and whole tree. */
  volume(equations: StemEquations, tree: HeightTree): CubicFeet;
  /** In a tree with a broken top or rotten wood, as far as it is still there. Bark has no cull. */
  left(sections: StemSections): number;
}

/** From the ground to the tip, inside bark. */
export const wholeWood: StemPart = {
  title: "Wood",
  aliases: ["Total wood", "Inside bark"],
  volume: ({ wood }, tree) => wood(tree),
  left: ({ soundWood }) => soundWood,
};

const bark: StemPart = {
  title: "Bark",
  volume: (equations, tree) => equations.bark(tree),
  left: ({ standing }) => standing.woodAndBark - standing.wood,
};

const woodAndBark: StemPart = {
  title: "Wood and bark",
  aliases: ["Outside bark"],
  volume: (equations, tree) => cubicFeet(equations.wood(tree) + equations.bark(tree)),
  left: (sections) => wholeWood.left(sections) + bark.left(sections),
};

const merchantable: StemPart = {
  title: "Merchantable wood",
  aliases: ["Merchantable"],
  volume: merchantableWood,
  left: (sections) => sections.merchantable.wood * sections.soundShare,
};

const sawlog: StemPart = {
  title: "Sawlog wood",
  aliases: ["Sawlog"],
  volume: sawlogWood,
  left: (sections) => sections.sawlog.wood * sections.soundShare,
};

/**
 * What is left of a part of the stem. Where in the stem the cull sits is not known, so that every part loses its share.
 *
 * @throws InvalidInput when a measure is out of bounds
 */
export const partLeft = (part: StemPart, equations: StemEquations, tree: HeightTree, condition: Condition): CubicFeet =>
  cubicFeet(part.left(stemSections(equations, tree, condition)));

export const stemParts: readonly StemPart[] = [wholeWood, bark, woodAndBark, merchantable, sawlog];
