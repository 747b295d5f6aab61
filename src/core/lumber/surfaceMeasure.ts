import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { squareFeet, type Feet, type Inches, type SquareFeet } from "../basis/units";

export const surfaceMeasureSources: readonly Source[] = [
  {
    author: "American Hardwood Export Council",
    year: "n.d.",
    title: "Measurement of sawn hardwood, after the rules of the National Hardwood Lumber Association",
    where: "[1] width in inches times length in feet over 12, to the nearest whole number",
    url: "https://www.americanhardwood.org/en/american-hardwood/grading-sawn-lumber/measurement",
    standing: "read",
  },
  {
    author: "goodwoodcorp.com",
    year: "n.d.",
    title: "Hardwood terminology",
    where: "[2] length in whole feet, fractions dropped; width with its fraction; under 1 in thick counts as 1 in",
    url: "http://goodwoodcorp.com/HardWoodTerminology.asp",
    standing: "read",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Exact halves of surface measure",
    where: "[3] a lone board: to the even number; in a tally: turn about, the first one down",
    standing: "choice of ours",
  },
];

const A_HAIR = 1e-9; // ft and ft2: keeps 8 ft or a half what they are when they come out of a conversion

/**
 * Surface measure of a hardwood board before it is rounded.
 *
 *     S = W L / 12
 *
 *     S  surface measure                        [ft2]
 *     W  width, its fraction kept [2]           [in]
 *     L  length, its fraction of a foot dropped [ft]
 *
 * @throws InvalidInput when a measure is not above 0
 */
export function exactSurfaceMeasure(width: Inches, length: Feet): SquareFeet {
  requirePositive("Width", width, "in");
  requirePositive("Length", length, "ft");
  return squareFeet((width * Math.floor(length + A_HAIR)) / 12);
}

/** True when a surface measure lies exactly between two whole numbers. */
export const isHalf = (measure: SquareFeet): boolean => Math.abs((measure % 1) - 0.5) < A_HAIR;

/**
 * Surface measure of one hardwood board, as it is written on the board: to the nearest whole number [1]. An exact half
 * goes to the even number, which over many boards comes to what turn about does [3].
 *
 * @throws InvalidInput when a measure is not above 0
 */
export function surfaceMeasure(width: Inches, length: Feet): SquareFeet {
  const exact = exactSurfaceMeasure(width, length);
  return squareFeet(isHalf(exact) ? 2 * Math.round(exact / 2) : Math.round(exact));
}
