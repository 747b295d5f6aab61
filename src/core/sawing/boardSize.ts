import { InvalidInput } from "../basis/problem";
import { requireNotNegative, requirePositive } from "../basis/require";
import { boardFeet, type BoardFeet, type Dollars, type DollarsPerMbf, type Feet, type Inches } from "../basis/units";
import { boardMeasure } from "../lumber/boardMeasure";
import { resawnFrom, type Resawing } from "./resawn";

/** A board the owner would take off the mill, at the size it is sawn to. */
export interface BoardSize {
  /** As sawn, green. [in] */
  readonly thickness: Inches;
  /** Free of wane on both faces. [in] */
  readonly width: Inches;
  /** The only length that is wanted; left out when any length will do. [ft] */
  readonly length?: Feet;
  /** What 1000 board feet of it are worth; left out when no prices are known. [$/MBF] */
  readonly price?: DollarsPerMbf;
  /** What one piece is worth whatever its length; takes the place of the price per MBF. [$] */
  readonly pricePerPiece?: Dollars;
  /** Given: the size is that of a blank that is sawn further; prices and board feet are of the pieces it gives. */
  readonly resawing?: Resawing;
}

/** A board size at a length. */
export interface BoardPiece extends BoardSize {
  /** [ft] */
  readonly length: Feet;
}

/** Board feet of a piece at its sawn size: the plan speaks of wood, not of a nominal sales tally. */
export function sawnBoardFeet({ thickness, width, length, resawing }: BoardPiece): BoardFeet {
  if (!resawing) return boardMeasure(thickness, width, length);
  const each = resawnFrom({ thickness, length }, resawing);
  return boardFeet((each.pieces * each.thickness * width * each.length) / 12);
}

/** How many pieces are sold of it: one, or what its blank is sawn into. */
export const piecesOf = ({ thickness, length, resawing }: BoardPiece): number =>
  resawing ? resawnFrom({ thickness, length }, resawing).pieces : 1;

/** What a plan adds up: dollars when the boards are priced, else board feet. */
export function worthOf(piece: BoardPiece, priced: boolean): number {
  const volume = sawnBoardFeet(piece);
  if (!priced) return volume;
  return piece.pricePerPiece === undefined
    ? (volume * (piece.price ?? 0)) / 1000
    : piece.pricePerPiece * piecesOf(piece);
}

/**
 * True when the list is priced, so that a plan can go for value instead of board feet.
 *
 * @throws InvalidInput when a measure is not above 0, the list is empty, or only part of it is priced
 */
export function isPriced(sizes: readonly BoardSize[]): boolean {
  if (sizes.length === 0)
    throw new InvalidInput("Your board list is empty. Give it at least one thickness and width in inches.");
  for (const { thickness, width, length, price = 0, pricePerPiece = 0 } of sizes) {
    requirePositive("Board thickness", thickness, "in");
    requirePositive("Board width", width, "in");
    if (length !== undefined) requirePositive("Board length", length, "ft");
    requireNotNegative("Board price", price, "$ per MBF");
    requireNotNegative("Price of a piece", pricePerPiece, "$");
  }
  const isUnpriced = ({ price, pricePerPiece }: BoardSize) => price === undefined && pricePerPiece === undefined;
  const unpriced = sizes.findIndex(isUnpriced);
  if (unpriced < 0) return true;
  if (sizes.every(isUnpriced)) return false;
  throw new InvalidInput(`Give every board in your list a price per MBF, or none. Board ${unpriced + 1} has no price.`);
}
