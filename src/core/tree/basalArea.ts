import { SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER } from "../basis/circle";
import { requirePositive } from "../basis/require";
import { squareFeet, type Inches, type SquareFeet } from "../basis/units";

/**
 * Basal area: the cross-section of a stem at breast height, taken as a circle.
 *
 *     BA = pi D^2 / 576
 *
 *     BA  basal area                              [ft2]
 *     D   diameter at breast height, over bark    [in]
 *
 * The exact constant, not the rounded 0.005454: short constants move the fourth digit of a tree factor.
 *
 * @throws InvalidInput when D is not a number above 0
 */
export function basalArea(dbh: Inches): SquareFeet {
  requirePositive("DBH", dbh, "in");
  return squareFeet(SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER * dbh * dbh);
}
