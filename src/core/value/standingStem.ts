import type { Feet } from "../basis/units";
import { requireHeightTree, type HeightTree, type StemEquations } from "../tree/national/stemEquations";
import { cumulativeShare, stemDiameterAt } from "../tree/national/taper";
import type { Stem } from "./buckOrder";

/**
 * The stem of a standing tree as the national equations draw it, ready to be cut. Wood that is known better, as by a
 * table of the owner's own, takes the place of theirs: the stem keeps their form, and every section of it is as
 * much larger as that wood is more, since the taper equation has the volume as a factor (a choice of ours).
 *
 * @param wood of the whole stem, from the ground to the tip; left out, by the equations [ft3]
 * @throws InvalidInput when a measure is out of bounds
 */
export function standingStem(equations: StemEquations, tree: HeightTree, wood = equations.wood(tree)): Stem {
  requireHeightTree(tree);
  const { height } = tree;
  const { shapeInside } = equations;
  const woodBelow = (h: Feet) => wood * cumulativeShare(h, height, shapeInside);
  return {
    height,
    diameterAt: (h) => stemDiameterAt(h, height, wood, shapeInside),
    woodBetween: (from, to) => woodBelow(to) - woodBelow(from),
  };
}
