import type { Inches } from "../../basis/units";
import type { Way } from "../filling/way";
import type { Flitch } from "../flitches";
import type { RoomFor } from "../room";
import type { SideBoards } from "../sideBoards";
import type { BedLimits } from "../stackOnBed";

/** A cant at the place where it is worth most, with the side boards above and below it. */
export interface Cant {
  readonly thickness: Inches;
  /** Of its middle above the pith; of a symmetrical log without a scale never below it. [in] */
  readonly offset: number;
  readonly worth: number;
  readonly pieces: number;
  /** What it is sawn into when it has been turned. */
  readonly inside: Way<Flitch>;
  /** The side boards under its lower face, and, seen from above, those over its upper face. */
  readonly under: Way<Flitch> | undefined;
  readonly over: Way<Flitch> | undefined;
}

export interface CantOrder extends BedLimits {
  /** A cant worth less may be left out. */
  readonly toBeat?: number;
  /** The only thicknesses that are tried, as they come off the saw. Left out: every one that can matter. */
  readonly thicknesses?: readonly Inches[];
  /** Of cants worth the same, in as many pieces, one as thick as a board is wide is kept. [in] */
  readonly boardWidths: readonly Inches[];
  readonly widestCut: number;
  /** Flitches that the cant may be sawn into. */
  readonly inside: readonly (readonly Flitch[])[];
  readonly roomFor: RoomFor;
  readonly sideBoards: SideBoards;
  /** One face of the cant lies at or under the lower of these, the other at or over the upper: between them a cut would
   * be too wide. [in] */
  readonly facesBeyond: { readonly low: number; readonly high: number };
}
