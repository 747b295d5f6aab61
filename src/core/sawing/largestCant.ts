import { requireBetween, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { inches, type Inches } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "Geometry",
    year: "",
    title: "Rectangle in a circle",
    where: "w^2 + t^2 = D^2; the square has the sides D / sqrt(2)",
    standing: "computed",
  },
];

/**
 * The largest full-edged cant that lies in a log, the pith in its middle: the square, or that of a wanted width.
 *
 *     t = sqrt(D^2 - w^2)
 *
 *     t, w  thickness and width of the cant  [in]
 *     D     diameter at the small end        [in]
 *
 * @throws InvalidInput when D is not above 0, or the width is not below D
 */
export function largestCant(smallEnd: Inches, width?: Inches): { readonly thickness: Inches; readonly width: Inches } {
  requirePositive("Small end", smallEnd);
  if (width === undefined) {
    const side = inches(smallEnd / Math.SQRT2);
    return { thickness: side, width: side };
  }
  requirePositive("Width", width);
  requireBetween("Width", width, 0, smallEnd);
  requirePositive("Thickness left of that width", smallEnd - width);
  return { thickness: inches(Math.sqrt(smallEnd ** 2 - width ** 2)), width };
}
