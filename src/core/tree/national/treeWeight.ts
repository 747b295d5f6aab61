import type { Source } from "../../basis/source";
import type { Pounds } from "../../basis/units";
import { nationalCoefficients, nationalEquations, nationalSpecies } from "../../reference/national/sources";
import { requireHeightTree, type HeightTree } from "./stemEquations";

/**
 * Pounds of a part of a tree.
 *
 * @param weigh the weight, made ready for the tree's species and stand
 * @throws InvalidInput when a measure is out of bounds
 */
export function treeWeight(weigh: (tree: HeightTree) => Pounds, tree: HeightTree): Pounds {
  requireHeightTree(tree);
  return weigh(tree);
}

export const sources: readonly Source[] = [nationalEquations, nationalCoefficients, nationalSpecies];
