import type { Feet } from "../basis/units";
import type { BoardPiece, BoardSize } from "./boardSize";
import { HAIR } from "./filling/hair";
import type { SawLog } from "./sawLog";

/** Which lengths are kept when a board does not run the whole log. */
export interface BoardLengths {
  /** [ft] */
  readonly shortest: Feet;
  /** Steps between lengths, counted from the shortest. [ft] */
  readonly step: Feet;
}

/** Every listed size at every length that it may have, parted by thickness and length. */
export function boardPieces(
  log: SawLog,
  sizes: readonly BoardSize[],
  lengths: BoardLengths,
): readonly PiecesOfThickness[] {
  const thicknesses = [...new Set(sizes.map(({ thickness }) => thickness))].sort((a, b) => a - b);
  return thicknesses.map((thickness) => {
    const ofThickness = sizes.filter((size) => size.thickness === thickness);
    return lengthsOf(log, lengths, ofThickness).map((length) => ({
      length,
      pieces: ofThickness.filter((size) => fitsLength(size, length)).map((size) => ({ ...size, length })),
    }));
  });
}

export type PiecesOfThickness = readonly { readonly length: Feet; readonly pieces: readonly BoardPiece[] }[];

/** The lengths boards are cut to, and the wanted ones of their own; a length of its own may be below the shortest. */
function lengthsOf(log: SawLog, { shortest, step }: BoardLengths, sizes: readonly BoardSize[]): readonly Feet[] {
  const lengths: Feet[] = [];
  if (sizes.some(({ length }) => length === undefined)) {
    for (let i = 0; shortest + i * step < log.length - HAIR; i += 1) lengths.push((shortest + i * step) as Feet);
    lengths.push(log.length);
  }
  for (const { length } of sizes) {
    if (length !== undefined && length <= log.length + HAIR) lengths.push(length);
  }
  return [...new Set(lengths)].sort((a, b) => a - b);
}

const fitsLength = ({ length }: BoardSize, wanted: Feet) => length === undefined || length === wanted;
