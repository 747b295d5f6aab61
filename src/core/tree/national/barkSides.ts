import type { Choice } from "../../basis/choices";
import type { Feet, Inches } from "../../basis/units";
import type { HeightTree, StemEquations } from "./stemEquations";
import { heightToDiameter, stemDiameterAt } from "./taper";

/** On which side of the bark a diameter is meant. */
export interface BarkSide extends Choice {
  diameter(equations: StemEquations, tree: HeightTree, h: Feet): Inches;
  /** Height at which the stem has tapered to a diameter; 0 where it is nowhere so thick. */
  heightTo(equations: StemEquations, tree: HeightTree, diameter: Inches): Feet;
}

export const insideBark: BarkSide = {
  title: "Inside",
  aliases: ["Inside bark", "DIB"],
  diameter: ({ wood, shapeInside }, tree, h) => stemDiameterAt(h, tree.height, wood(tree), shapeInside),
  heightTo: ({ wood, shapeInside }, tree, diameter) => heightToDiameter(diameter, tree.height, wood(tree), shapeInside),
};

const outsideBark: BarkSide = {
  title: "Outside",
  aliases: ["Outside bark", "DOB", "Over bark"],
  diameter: ({ outside, shapeOutside }, tree, h) => stemDiameterAt(h, tree.height, outside(tree), shapeOutside),
  heightTo: ({ outside, shapeOutside }, tree, diameter) =>
    heightToDiameter(diameter, tree.height, outside(tree), shapeOutside),
};

export const barkSides: readonly BarkSide[] = [insideBark, outsideBark];
