import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { inches, type Inches } from "../basis/units";

/**
 * Where on a Biltmore stick a diameter is marked. The stick is held level against the tree at breast height, its end in
 * line with one side of the stem; the mark then stands in line with the other side.
 *
 *     S = D / sqrt(1 + D / E)
 *
 *     S  from the end of the stick to the mark         [in]
 *     D  diameter of the tree                          [in]
 *     E  reach: from the eye to the stick              [in]
 *
 * @throws InvalidInput when a measure is not a number above 0
 */
export function biltmoreMark(dbh: Inches, reach: Inches): Inches {
  requirePositive("DBH", dbh, "in");
  requirePositive("Reach", reach, "in");
  return inches(dbh / Math.sqrt(1 + dbh / reach));
}

export const sources: readonly Source[] = [
  {
    author: "Web page Biltmore",
    year: "n.d.",
    title: "Biltmore stick, derivation",
    where: "the formula; the tests derive it anew from the lines of sight",
    url: "http://www.delphiforfun.org/Programs/Math_Topics/Biltmore.htm",
    standing: "read",
  },
];
