import { OutOfRange } from "../../basis/problem";
import { requireBetween } from "../../basis/require";
import { told } from "../../basis/telling";
import type { Feet, Inches } from "../../basis/units";
import type { BarkSide } from "./barkSides";
import { MOST_DBH, requireHeightTree, STUMP, type HeightTree, type StemEquations } from "./stemEquations";

/** Thinnest top that is asked for, a choice of ours: the tip of the curve is of no use to anyone. */
export const THINNEST = 0.5; // in

/**
 * Height above ground at which a standing stem has tapered to a diameter: where a product with that top ends.
 *
 * @param diameter [in], from 0.5
 * @throws InvalidInput when a measure is out of bounds
 * @throws OutOfRange when the stem is thinner already at its stump
 */
export function stemHeight(equations: StemEquations, tree: HeightTree, diameter: Inches, side: BarkSide): Feet {
  requireHeightTree(tree);
  requireBetween("Diameter", diameter, THINNEST, MOST_DBH, "in");
  const height = side.heightTo(equations, tree, diameter);
  if (height >= STUMP) return height;
  throw new OutOfRange((telling) => {
    const [wanted, stump] = [told(telling, diameter, "in"), told(telling, STUMP, "ft")];
    return `This stem is nowhere ${wanted} thick above its stump of ${stump}.`;
  });
}
