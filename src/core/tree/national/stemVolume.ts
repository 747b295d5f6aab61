import { nationalCoefficients, nationalEquations, nationalSpecies } from "../../reference/national/sources";
import type { Source } from "../../basis/source";
import type { CubicFeet } from "../../basis/units";
import { requireHeightTree, type HeightTree, type StemEquations } from "./stemEquations";
import type { StemPart } from "./stemParts";

/**
 * Cubic feet in a part of a tree's stem, by its diameter and its total height. The parts end where the report ends
 * them: see `stemSections`.
 *
 * @throws InvalidInput when a measure is out of bounds
 */
export function stemVolume(equations: StemEquations, tree: HeightTree, part: StemPart): CubicFeet {
  requireHeightTree(tree);
  return part.volume(equations, tree);
}

export const sources: readonly Source[] = [nationalEquations, nationalCoefficients, nationalSpecies];
