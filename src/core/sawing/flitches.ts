import { inches, type Feet, type Inches } from "../basis/units";
import { boardPieces, type BoardLengths } from "./boardPieces";
import { worthOf, type BoardPiece, type BoardSize } from "./boardSize";
import { waysToFill } from "./filling/fill";
import { HAIR } from "./filling/hair";
import { slotsOf } from "./filling/way";
import { freedThickness } from "./scale";
import { acrossLargeEnd, acrossSmallEnd, diameterAt, type SawLog } from "./sawLog";

/** What a slice of the log is edged to: one board, or several of one length side by side. */
export interface Flitch {
  /** As it comes off the saw: as listed, or thicker where the settings keep to a scale. [in] */
  readonly thickness: Inches;
  /** As listed for its boards. [in] */
  readonly listed: Inches;
  /** True where its thickness is that of the last piece on the bed; see scale.ts. */
  readonly isLeftOnBed?: boolean;
  readonly length: Feet;
  /** The widest first. */
  readonly boards: readonly BoardPiece[];
  /** Over all boards and the kerfs between them. [in] */
  readonly width: Inches;
  /** What the plan adds up: dollars when the boards are priced, else board feet. */
  readonly worth: number;
}

/** What flitches are edged to, and how. */
export interface Edging {
  readonly sizes: readonly BoardSize[];
  readonly priced: boolean;
  readonly lengths: BoardLengths;
  /** Wood lost between two boards of one flitch. [in] */
  readonly edgerKerf: number;
  /** False when each flitch gives one board only. */
  readonly sideBySide: boolean;
  /** Of the head saw, and the step of the scale that it is set by; no step: it can be set anywhere. [in] */
  readonly kerf: number;
  readonly scaleStep?: number;
}

/**
 * Every way worth taking to cross-cut and edge a flitch of this log, grouped by thickness, those worth most first. The
 * flitch is cut to one length, from the shortest up or the log's full one, and that from the large end, since taper
 * leaves wane at the small end first. Across it lie boards of the listed widths side by side, an edger's kerf between
 * them: for every total width the boards that are worth most, found exactly like a stack of boards.
 */
export function flitches(log: SawLog, edging: Edging): readonly (readonly Flitch[])[] {
  return boardPieces(log, edging.sizes, edging.lengths)
    .map((ofThickness) =>
      ofThickness
        .flatMap(({ length, pieces }) => edgedFrom(pieces, widestAt(log, length), edging))
        .sort((a, b) => b.worth - a.worth || a.boards.length - b.boards.length || b.length - a.length),
    )
    .filter((group) => group.length > 0);
}

interface PricedPiece {
  readonly piece: BoardPiece;
  readonly worth: number;
}

function edgedFrom(boards: readonly BoardPiece[], widest: number, edging: Edging): readonly Flitch[] {
  const { priced, edgerKerf, sideBySide } = edging;
  const pieces = boards.map((piece): PricedPiece => ({ piece, worth: worthOf(piece, priced) }));
  if (!sideBySide) {
    return pieces
      .filter(({ piece }) => piece.width <= widest + HAIR)
      .map((one) => flitchOf([one], one.piece.width, edging));
  }
  const slots = pieces.map((item) => [
    { extent: item.piece.width, low: 0, high: widest, worth: item.worth, pieces: 1, item },
  ]);
  const [, ...ways] = waysToFill(slots, edgerKerf);
  return ways.map((way) => {
    const across = slotsOf(way).map(({ slot }) => slot.item);
    return flitchOf(
      across.sort((a, b) => b.piece.width - a.piece.width),
      way.free - edgerKerf,
      edging,
    );
  });
}

export function flitchOf(across: readonly PricedPiece[], width: number, { kerf, scaleStep }: Edging): Flitch {
  const { thickness, length } = (across[0] as PricedPiece).piece;
  return {
    thickness: inches(freedThickness(thickness, kerf, scaleStep)),
    listed: thickness,
    length,
    boards: across.map(({ piece }) => piece),
    width: inches(width),
    worth: across.reduce((sum, { worth }) => sum + worth, 0),
  };
}

/** The widest that a board of a length can be, whichever way the log lies. */
function widestAt(log: SawLog, length: number): number {
  const [large, small] = [acrossLargeEnd(log), acrossSmallEnd(log)];
  return Math.max(diameterAt(log, length), large - ((large - small) * length) / log.length);
}
