import type { BoardPiece } from "./boardSize";
import type { Sides } from "./sides";
import { HAIR } from "./filling/hair";
import type { Flitch } from "./flitches";
import { asFirstLaid, outline, type Face, type Outline } from "./outline";
import { sectionsTo, type LyingLog } from "./lyingLog";
import { commonFace } from "./room";
import type { SawLog } from "./sawLog";
import type { Stacked } from "./stack";

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
  /** How it is laid for the first cut. */
  readonly lying: LyingLog;
  /** Kerf of the head saw. [in] */
  readonly kerf: number;
  readonly edgerKerf: number;
  /** Share of a board's thickness over which wane may show on its edges, 0 to 1. */
  readonly wane: number;
  /** Step of the scale that the head is set by; left out where it can be set anywhere. [in] */
  readonly scaleStep?: number;
}

/** Lays a flitch into the end view: its boards in the middle of the wood that its faces have room for. */
export function sawn(stacked: Stacked, face: Face, sides: Sides, sawing: Sawing): SawnFlitch {
  const { flitch, lower } = stacked;
  const sections = sectionsTo(sawing.lying, flitch.length, face);
  const wood = commonFace(sections, lower, flitch.thickness, sawing.wane) ?? {
    left: 0,
    right: 0,
  };
  const middle = (Math.max(sides.left, wood.left) + Math.min(sides.right, wood.right)) / 2;
  return laid(flitch, face, middle - flitch.width / 2, lower, sides, sawing);
}

/** Lays a flitch whose place is known on both axes. */
export function laid(
  flitch: Flitch,
  face: Face,
  left: number,
  lower: number,
  sides: Sides,
  { edgerKerf, scaleStep = HAIR }: Pick<Sawing, "edgerKerf" | "scaleStep">,
): SawnFlitch {
  const upper = lower + flitch.thickness;
  let next = left;
  const boards = flitch.boards.map((piece) => {
    const at = next;
    next += piece.width + edgerKerf;
    return {
      piece,
      outline: asFirstLaid(outline(at, at + piece.width, lower, upper), face),
    };
  });
  return {
    flitch,
    outline: asFirstLaid(outline(left, left + flitch.width, lower, upper), face),
    boards,
    edged: boards.length === 1 && Math.abs(sides.right - sides.left - flitch.width) < scaleStep,
  };
}
