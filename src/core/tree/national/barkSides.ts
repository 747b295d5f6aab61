import type { Choice } from "../../basis/choices";
import type { Feet, Inches } from "../../basis/units";
import type { HeightTree, StemEquations } from "./stemEquations";
import { stemDiameterAt } from "./taper";

/** On which side of the bark a diameter is meant. */
export interface BarkSide extends Choice {
  diameter(equations: StemEquations, tree: HeightTree, h: Feet): Inches;
}

export const insideBark: BarkSide = {
  title: "Inside",
  aliases: ["Inside bark", "DIB"],
  diameter: ({ wood, shapeInside }, tree, h) => stemDiameterAt(h, tree.height, wood(tree), shapeInside),
};

const outsideBark: BarkSide = {
  title: "Outside",
  aliases: ["Outside bark", "DOB", "Over bark"],
  diameter: ({ outside, shapeOutside }, tree, h) => stemDiameterAt(h, tree.height, outside(tree), shapeOutside),
};

export const barkSides: readonly BarkSide[] = [insideBark, outsideBark];
