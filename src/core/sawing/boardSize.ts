import { InvalidInput } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { BoardFeet, DollarsPerMbf, Feet, Inches } from "../basis/units";
import { boardMeasure } from "../lumber/boardMeasure";

/** A board the owner would take off the mill, at the size it is sawn to. */
export interface BoardSize {
  /** As sawn, green. [in] */
  readonly thickness: Inches;
  /** Free of wane on both faces. [in] */
  readonly width: Inches;
  /** What 1000 board feet of it are worth; left out when no prices are known. [$/MBF] */
  readonly price?: DollarsPerMbf;
}

/** A board size at a length. */
export interface BoardPiece extends BoardSize {
  /** [ft] */
  readonly length: Feet;
}

/** Board feet of a piece at its sawn size: the plan speaks of wood, not of a nominal sales tally. */
export const sawnBoardFeet = ({ thickness, width, length }: BoardPiece): BoardFeet =>
  boardMeasure(thickness, width, length);

/**
 * True when the list is priced, so that a plan can go for value instead of board feet.
 *
 * @throws InvalidInput when a size is not above 0, the list is empty, or only part of it is priced
 */
export function isPriced(sizes: readonly BoardSize[]): boolean {
  if (sizes.length === 0)
    throw new InvalidInput("Your board list is empty. Give it at least one thickness and width in inches.");
  for (const { thickness, width } of sizes) {
    requirePositive("Board thickness", thickness, "in");
    requirePositive("Board width", width, "in");
  }
  const unpriced = sizes.findIndex(({ price }) => price === undefined);
  if (unpriced < 0) return true;
  if (sizes.every(({ price }) => price === undefined)) return false;
  throw new InvalidInput(`Give every board in your list a price per MBF, or none. Board ${unpriced + 1} has no price.`);
}
