import type { BoardPiece } from "./boardSize";
import type { Sides } from "./candidates";
import { HAIR } from "./fill";
import type { Flitch } from "./flitches";
import { asFirstLaid, outline, type Face, type Outline } from "./outline";
import { diameterAt, type SawLog } from "./sawLog";
import { upperFace, type Stacked } from "./stack";

/** A board at its place in the log. */
export interface SawnBoard {
  readonly piece: BoardPiece;
  readonly outline: Outline;
}

/** A flitch at its place in the log, and the boards it is edged to. */
export interface SawnFlitch {
  readonly flitch: Flitch;
  readonly outline: Outline;
  readonly boards: readonly SawnBoard[];
  /** True when both edges were sawn before it was freed, so that it leaves the saw as a board. */
  readonly edged: boolean;
}

/** How a log is sawn, whatever its pattern. */
export interface Sawing {
  readonly log: SawLog;
  /** Kerf of the head saw. [in] */
  readonly kerf: number;
  readonly edgerKerf: number;
  /** Share of a board's thickness over which wane may show on its edges, 0 to 1. */
  readonly wane: number;
}

/** Lays a flitch into the end view: its boards in the middle of the wood that its outer face has room for. */
export function sawn(stacked: Stacked, face: Face, sides: Sides, sawing: Sawing): SawnFlitch {
  const { flitch, lower } = stacked;
  const upper = upperFace(stacked);
  const radius = diameterAt(sawing.log, flitch.length) / 2;
  const outer = Math.max(Math.abs(lower), Math.abs(upper)) - sawing.wane * flitch.thickness;
  const chord = Math.sqrt(Math.max(0, radius ** 2 - Math.max(0, outer) ** 2));
  const middle = (Math.max(sides.left, 0 - chord) + Math.min(sides.right, chord)) / 2;
  return laid(flitch, face, middle - flitch.width / 2, lower, sides, sawing.edgerKerf);
}

/** Lays a flitch whose place is known on both axes. */
export function laid(
  flitch: Flitch,
  face: Face,
  left: number,
  lower: number,
  sides: Sides,
  edgerKerf: number,
): SawnFlitch {
  const upper = lower + flitch.thickness;
  let next = left;
  const boards = flitch.boards.map((piece) => {
    const at = next;
    next += piece.width + edgerKerf;
    return { piece, outline: asFirstLaid(outline(at, at + piece.width, lower, upper), face) };
  });
  return {
    flitch,
    outline: asFirstLaid(outline(left, left + flitch.width, lower, upper), face),
    boards,
    edged: boards.length === 1 && Math.abs(sides.right - sides.left - flitch.width) < HAIR,
  };
}
