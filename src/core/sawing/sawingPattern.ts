import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import type { CutList } from "./cutList";
import type { Edging, Flitch } from "./flitches";
import { ROOM_STEP, type RoomFor } from "./room";
import type { Sawing, SawnFlitch } from "./sawnFlitch";
import type { SideBoards } from "./sideBoards";

/** A log to be sawn, and what it should be sawn into. Checked before a pattern sees it. */
export interface SawJob extends Sawing, Edging {
  /** What flitches can be edged to, whatever the pattern. */
  readonly groups: readonly (readonly Flitch[])[];
  readonly roomFor: RoomFor;
  /** Of those that pass above the blade. */
  readonly sideBoards: SideBoards;
  readonly kerf: number;
  readonly scaleStep?: number;
  /** What another way to saw the log is worth: a plan worth less need not be found. */
  readonly toBeat?: number;
  /** The lowest the blade can be set above the bed. [in] */
  readonly bladeAboveBed: number;
  /** The thickest piece that passes above the blade; a thicker one must be the last on the bed. [in] */
  readonly throat: number;
  /** The widest face that the saw can cut. [in] */
  readonly widestCut: number;
}

export interface SawPlan extends CutList, Sawing {
  /** Title of the pattern that was followed. */
  readonly pattern: string;
  /** True when that pattern was the best of several. */
  readonly isBestOf?: boolean;
  readonly priced: boolean;
  /** Every flitch that gives boards, in the order in which they are freed; never empty. */
  readonly flitches: readonly SawnFlitch[];
  /** What the plan adds up: dollars when the boards are priced, else board feet. */
  readonly worth: number;
  /** What the plan is the best of, in a sentence that can be shown. */
  readonly guarantee: string;
  /** Step of the settings among which it is the best; left out: they may be any. [in] */
  readonly grid?: number;
}

/** A way to open a log. A further one is a file in patterns/ and its name in patterns/index.ts. */
export interface SawingPattern extends Choice {
  readonly id: string;
  readonly sources: readonly Source[];
  /** @throws OutOfRange when no listed board fits, or the mill cannot follow the plan */
  plan(job: SawJob): SawPlan;
}

/**
 * Puts a plan together from the cuts that follow it.
 *
 * @param grid step of the settings that were tried; left out: that of the scale. Where there is none, they may be any in a
 *   symmetrical log, and in any other lie between places that are looked at every 1/32 in, see room.ts [in]
 */
export function planOf(
  job: SawJob,
  pattern: string,
  { cuts, lastOnBed }: CutList,
  guarantee: string,
  grid = job.scaleStep ?? (job.lying.isSymmetrical ? undefined : ROOM_STEP),
): SawPlan {
  const freed = cuts.flatMap(({ frees }) => (typeof frees === "string" ? [] : [frees]));
  const flitches = lastOnBed ? [...freed, lastOnBed] : freed;
  const { log, lying, kerf, edgerKerf, wane, scaleStep, priced } = job;
  return {
    log,
    lying,
    kerf,
    edgerKerf,
    wane,
    ...(scaleStep !== undefined && { scaleStep }),
    pattern,
    priced,
    cuts,
    ...(lastOnBed && { lastOnBed }),
    flitches,
    worth: flitches.reduce((sum, { flitch }) => sum + flitch.worth, 0),
    guarantee,
    ...(grid !== undefined && { grid }),
  };
}

export const goalOf = ({ priced }: { readonly priced: boolean }): string => (priced ? "more value" : "more board feet");
