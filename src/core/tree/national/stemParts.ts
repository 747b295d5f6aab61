import type { Choice } from "../../basis/choices";
import { cubicFeet, type CubicFeet } from "../../basis/units";
import type { HeightTree, StemEquations } from "./stemEquations";
import { merchantableWood, sawlogWood } from "./stemSections";

/** A part of the stem whose volume can be asked for. */
export interface StemPart extends Choice {
  volume(equations: StemEquations, tree: HeightTree): CubicFeet;
}

/** From the ground to the tip, inside bark. */
export const wholeWood: StemPart = {
  title: "Wood",
  aliases: ["Total wood", "Inside bark"],
  volume: ({ wood }, tree) => wood(tree),
};

const bark: StemPart = { title: "Bark", volume: (equations, tree) => equations.bark(tree) };

const woodAndBark: StemPart = {
  title: "Wood and bark",
  aliases: ["Outside bark"],
  volume: (equations, tree) => cubicFeet(equations.wood(tree) + equations.bark(tree)),
};

const merchantable: StemPart = {
  title: "Merchantable wood",
  aliases: ["Merchantable"],
  volume: merchantableWood,
};

const sawlog: StemPart = { title: "Sawlog wood", aliases: ["Sawlog"], volume: sawlogWood };

export const stemParts: readonly StemPart[] = [wholeWood, bark, woodAndBark, merchantable, sawlog];
