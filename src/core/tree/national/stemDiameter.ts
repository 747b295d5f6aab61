import { requireBetween } from "../../basis/require";
import type { Source } from "../../basis/source";
import type { Feet, Inches } from "../../basis/units";
import { nationalCoefficients, nationalEquations, nationalSpecies } from "../../reference/national/sources";
import type { BarkSide } from "./barkSides";
import { requireHeightTree, type HeightTree, type StemEquations } from "./stemEquations";

/** The curve has no end towards the ground, where roots flare; this far down it is still of some use. [ft] */
export const LOWEST = 0.1;

/**
 * Diameter of a standing stem at a height above ground.
 *
 * @param h height above ground [ft], 0.1 ft to the tip
 * @throws InvalidInput when a measure is out of bounds
 */
export function stemDiameter(equations: StemEquations, tree: HeightTree, h: Feet, side: BarkSide): Inches {
  requireHeightTree(tree);
  requireBetween("At height", h, LOWEST, tree.height, "ft");
  return side.diameter(equations, tree, h);
}

export const sources: readonly Source[] = [
  nationalEquations,
  nationalCoefficients,
  nationalSpecies,
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Taper inside bark",
    where: "equation 7 with the volume and ratio inside bark; the report prints its use outside bark",
    standing: "computed",
  },
];
