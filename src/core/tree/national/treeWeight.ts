import { OutOfRange } from "../../basis/problem";
import { requireBetween } from "../../basis/require";
import type { Source } from "../../basis/source";
import type { Pounds } from "../../basis/units";
import { nationalCoefficients, nationalEquations, nationalSpecies } from "../../reference/national/sources";
import type { Species } from "./species";
import { requireHeightTree, type HeightTree, type Stand } from "./stemEquations";
import type { Condition } from "./stemSections";
import type { TreeWeight } from "./treeWeights";

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

/**
 * Pounds of a part of a tree that may be partly rotten or broken off. Rotten wood keeps its share of the density by
 * Table 1 of the report; nothing is left above the break.
 *
 * @throws InvalidInput when a measure is out of bounds
 * @throws OutOfRange for a weight with bark and branches in it, unless the tree is sound and whole
 */
export function weightLeft(
  weight: TreeWeight,
  species: Species,
  stand: Stand,
): (tree: HeightTree, condition: Condition) => Pounds {
  const whole = weight.of(species, stand);
  const left = weight.left?.(species, stand);
  return (tree, condition) => {
    const { cull = 0, brokenAt = tree.height } = condition;
    requireHeightTree(tree);
    requireBetween("Cull", cull, 0, 100, "%");
    requireBetween("Broken at", brokenAt, 0, tree.height, "ft");
    if (left) return left(tree, condition);
    if (cull === 0 && brokenAt === tree.height) return whole(tree);
    throw new OutOfRange(
      `${weight.title} is known for a sound, whole tree only. With cull or a broken top, ask for Stem wood.`,
    );
  };
}

export const sources: readonly Source[] = [nationalEquations, nationalCoefficients, nationalSpecies];
