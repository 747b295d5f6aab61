import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { sum, type Step } from "../basis/step";
import { boardFeet, type BoardFeet, type Feet, type Inches } from "../basis/units";

export const boardMeasureSources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Board measure",
    where: "a board foot is 1 in x 12 in x 1 ft; taken of the measures given, nominal or actual",
    standing: "common practice",
  },
];

/**
 * Board feet in a number of like boards, of the very measures given.
 *
 *     V = T W L / 12 * n
 *
 *     V  board measure    [bf]
 *     T  thickness        [in]
 *     W  width            [in]
 *     L  length           [ft]
 *     n  number of boards
 *
 * Nominal sizes give nominal board feet, actual sizes actual ones. Nothing is rounded, and a board thinner than 1 in
 * counts as what it is; many sellers of lumber count it as 1 in.
 *
 * @throws InvalidInput when a measure or the number is not above 0
 */
export function boardMeasure(thickness: Inches, width: Inches, length: Feet, pieces = 1): BoardFeet {
  requirePositive("Thickness", thickness, "in");
  requirePositive("Width", width, "in");
  requirePositive("Length", length, "ft");
  requirePositive("Pieces", pieces);
  return boardFeet(((thickness * width * length) / 12) * pieces);
}

/** The way to the board feet, step by step; the last step is what boardMeasure gives. */
export function boardMeasureWorking(thickness: Inches, width: Inches, length: Feet, pieces = 1): readonly Step[] {
  const all = boardMeasure(thickness, width, length, pieces);
  const end = thickness * width;
  const one = (end * length) / 12;
  return [
    { sum: sum`${thickness} * ${width}`, meaning: "Area of the board's end", value: end, unit: "in2" },
    { sum: sum`${end} * ${length} / 12`, meaning: "Times the length, over 12", value: one, unit: "bf" },
    { sum: sum`${one} * ${pieces}`, meaning: "Times the pieces", value: all, unit: "bf" },
  ];
}
