import type { Feet } from "../basis/units";
import { requireHeightTree, type HeightTree, type StemEquations } from "../tree/national/stemEquations";
import { cumulativeShare, stemDiameterAt } from "../tree/national/taper";
import type { Stem } from "./buckOrder";

/**
 * The stem of a standing tree as the national equations draw it, ready to be cut.
 *
 * @throws InvalidInput when a measure is out of bounds
 */
export function standingStem(equations: StemEquations, tree: HeightTree): Stem {
  requireHeightTree(tree);
  const { height } = tree;
  const { shapeInside } = equations;
  const wood = equations.wood(tree);
  const woodBelow = (h: Feet) => wood * cumulativeShare(h, height, shapeInside);
  return {
    height,
    diameterAt: (h) => stemDiameterAt(h, height, wood, shapeInside),
    woodBetween: (from, to) => woodBelow(to) - woodBelow(from),
  };
}
