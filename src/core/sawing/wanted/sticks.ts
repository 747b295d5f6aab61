import { dollars, feet } from "../../basis/units";
import type { BoardPiece, BoardSize } from "../boardSize";

/** Boards to saw, each to be cut crosswise into wanted pieces, and how to read a sawn one back into pieces. */
export interface Sticks {
  readonly sizes: readonly BoardSize[];
  /** Numbers of the pieces that a sawn board is cut into; a piece may come twice. */
  readonly piecesIn: (board: BoardPiece) => readonly number[];
}

interface Stick {
  readonly worth: number;
  readonly pieces: readonly number[];
}

/** Lengths are told apart to a millionth of a foot, so that sums of decimals meet. */
const PER_FOOT = 1e6;

/**
 * Boards as long as one wanted piece or as several of one cross-section end to end, up to a length. For every such
 * length the pieces that are worth most, by dynamic programming over the lengths; a longer board that is worth no more
 * than a shorter one is left out. What the cut between two pieces takes comes out of the trim of the log.
 *
 * @param worths of each piece; one that is worth nothing is left out
 */
export function sticksOf(pieces: readonly BoardPiece[], worths: readonly number[], longest: number): Sticks {
  const sections = new Map<string, number[]>();
  pieces.forEach((piece, i) => {
    if (!((worths[i] as number) > 0) || piece.length * PER_FOOT > longest * PER_FOOT + 1) return;
    const key = sectionOf(piece);
    sections.set(key, [...(sections.get(key) ?? []), i]);
  });

  const sizes: BoardSize[] = [];
  const cuts = new Map<string, readonly number[]>();
  for (const members of sections.values()) {
    const { thickness, width } = pieces[members[0] as number] as BoardPiece;
    for (const [length, stick] of sticksOfSection(members, pieces, worths, longest)) {
      const size = {
        thickness,
        width,
        length: feet(length / PER_FOOT),
        pricePerPiece: dollars(stick.worth),
      };
      sizes.push(size);
      cuts.set(keyOf(size), stick.pieces);
    }
  }
  return { sizes, piecesIn: (board) => cuts.get(keyOf(board)) ?? [] };
}

function sticksOfSection(
  members: readonly number[],
  pieces: readonly BoardPiece[],
  worths: readonly number[],
  longest: number,
): ReadonlyMap<number, Stick> {
  const lengths = members.map((i) => Math.round((pieces[i] as BoardPiece).length * PER_FOOT));
  const most = Math.round(longest * PER_FOOT);
  const known = new Map<number, Stick>([[0, { worth: 0, pieces: [] }]]);
  const kept = new Map<number, Stick>();
  const waiting = [0];
  let best = -1;
  while (waiting.length > 0) {
    const length = waiting.shift() as number;
    const stick = known.get(length) as Stick;
    if (stick.worth <= best) continue;
    best = stick.worth;
    if (length > 0) kept.set(length, stick);
    members.forEach((piece, i) => {
      const longer = length + (lengths[i] as number);
      const worth = stick.worth + (worths[piece] as number);
      const before = known.get(longer);
      if (longer > most + 1 || (before && before.worth >= worth)) return;
      known.set(longer, { worth, pieces: [...stick.pieces, piece] });
      if (!before) waiting.splice(placeOf(waiting, longer), 0, longer);
    });
  }
  return kept;
}

function placeOf(sorted: readonly number[], value: number): number {
  const at = sorted.findIndex((one) => one > value);
  return at < 0 ? sorted.length : at;
}

const sectionOf = ({ thickness, width }: BoardSize) => `${thickness} ${width}`;
const keyOf = ({ thickness, width, length }: BoardSize) => `${thickness} ${width} ${length}`;
