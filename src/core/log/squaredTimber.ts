import type { Source } from "../basis/source";
import { sum, type Step } from "../basis/step";
import { boardFeet, type BoardFeet } from "../basis/units";

/** Where the rules that give a squared timber, and not sawn boards, are told. */
export const squaredTimberSource: Source = {
  author: "Graves, USDA Forest Service",
  year: "n.d.",
  title: "Bulletin 36",
  where: "excerpt: the square of two-thirds of the middle diameter; the inscribed square, 0.7071 of the diameter",
  url: "https://www.bookdepository.com/Bulletin-36-United-States-Forest-Service/9781236842435",
  standing: "read",
};

/**
 * Board feet in a square timber.
 *
 *     V = s^2 L / 12
 *
 *     V  volume         [bf]
 *     s  side           [in]
 *     L  length         [ft]
 */
export const squaredTimber = (side: number, length: number): BoardFeet => boardFeet((side * side * length) / 12);

/** The way to it from the diameter of which the side is a share. */
export function squaredTimberWorking(share: number, diameter: number, length: number): readonly Step[] {
  const side = share * diameter;
  const volume = squaredTimber(side, length);
  return [
    { sum: sum`${share} * ${diameter}`, meaning: "Side of the square", value: side, unit: "in" },
    {
      sum: sum`${side} ^ 2 * ${length} / 12`,
      meaning: "Squared, times the length, over 12",
      value: volume,
      unit: "bf",
    },
  ];
}
