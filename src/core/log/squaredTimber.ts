import type { Source } from "../basis/source";
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
