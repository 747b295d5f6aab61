import type { Feet } from "../basis/units";
import { insideBark } from "../tree/national/barkSides";
import { requireHeightTree, type HeightTree, type StemEquations } from "../tree/national/stemEquations";
import { cumulativeShare } from "../tree/national/taper";
import type { Stem } from "./buckPlan";

/**
 * The stem of a standing tree as the national equations draw it, ready to be cut.
 *
 * @throws InvalidInput when a measure is out of bounds
 */
export function standingStem(equations: StemEquations, tree: HeightTree): Stem {
  requireHeightTree(tree);
  const wood = equations.wood(tree);
  const woodBelow = (h: Feet) => wood * cumulativeShare(h, tree.height, equations.shapeInside);
  return {
    height: tree.height,
    diameterAt: (h) => insideBark.diameter(equations, tree, h),
    woodBetween: (from, to) => woodBelow(to) - woodBelow(from),
  };
}
