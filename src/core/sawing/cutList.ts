import { inches, type Inches } from "../basis/units";
import type { Sides } from "./candidates";
import { HAIR } from "./fill";
import { asFirstLaid, outline, type Face, type Outline } from "./outline";
import type { SawLog } from "./sawLog";
import { sawn, type Sawing, type SawnFlitch } from "./sawnFlitch";
import { upperFace, type Stacked } from "./stack";

/** How the log is turned before a cut. */
export type Turn = "none" | "quarter turn" | "half turn" | "next half" | "next quarter";

/** One pass of the blade, in the order of work. */
export interface Cut {
  readonly turn: Turn;
  /** How far the small end is raised so that the pith lies level (split taper); 0 on a sawn face. [in] */
  readonly smallEndRaised: Inches;
  /** Height above the bed of what stays below the blade. [in] */
  readonly headReading: Inches;
  /** What the cut sets free; a "half" or a "quarter" is sawn on. */
  readonly frees: SawnFlitch | "slab" | "half" | "quarter";
  /** Where the blade passes, as far as wood is there: it becomes sawdust. */
  readonly kerfIn: Outline;
}

export interface CutList {
  readonly cuts: readonly Cut[];
  /** The board that is left on the bed when the last cut is made; none where only waste is left. */
  readonly lastOnBed?: SawnFlitch;
}

/** How the log lies when it is set for a run of cuts. */
export interface Setting {
  readonly turn: Turn;
  /** Which face of the log looks up. */
  readonly face: Face;
  /** The faces to the left and right that are sawn already. */
  readonly sides: Sides;
  /** Of the pith above the bed. [in] */
  readonly pithHeight: number;
  readonly smallEndRaised: number;
}

/** On its bark, the small end raised by half the taper: the pith lies level, half the large end above the bed. */
export const onBark = ({ largeEnd, smallEnd }: SawLog) => ({
  pithHeight: largeEnd / 2,
  smallEndRaised: (largeEnd - smallEnd) / 2,
});

/** On a sawn face: the pith lies level as far above the bed as that face was sawn from it. */
export const onSawnFace = (fromPith: number) => ({ pithHeight: fromPith, smallEndRaised: 0 });

/**
 * The cuts that open a face: the slab, then each flitch, down to a plane. A plane at y from the pith stands at
 *
 *     z = y + height of the pith above the bed
 *
 * @param flitches from the plane outwards, each a kerf above what is under it
 */
export function openFace(
  flitches: readonly Stacked[],
  plane: number,
  setting: Setting,
  sawing: Sawing,
): readonly Cut[] {
  const outermost = flitches.at(-1);
  const cut = cutter(setting, sawing);
  return [
    cut(outermost ? upperFace(outermost) : plane, "slab", setting.turn),
    ...[...flitches].reverse().map((one) => cut(one.lower - sawing.kerf, one)),
  ];
}

/**
 * The cuts that saw a stack of flitches through, turned over once near the middle.
 *
 * First half: as for opening a face. Half turn: the log lies on its sawn face, the lower faces now look up, and
 * settings are counted up from the bed,
 *
 *     z = b + sum of (t + k)
 *
 * from the last board b, so that it comes out at its thickness. Without the turn the last cut would pass within a
 * slab's depth of the bed, lower than a mill can go.
 *
 * @param stack from the lowest to the highest, one kerf apart; one at least can stay on the bed
 */
export function sawThrough(
  stack: readonly Stacked[],
  setting: Setting,
  sawing: Sawing,
  bed: { readonly bladeAboveBed: number; readonly throat: number },
): CutList {
  const last = lastOnBed(stack, bed.bladeAboveBed, bed.throat);
  const stays = stack[last] as Stacked;
  const firstHalf = openFace(stack.slice(last + 1), upperFace(stays), setting, sawing);

  const { face, sides } = setting;
  const cut = cutter({ ...setting, ...onSawnFace(upperFace(stays)) }, sawing, -1);
  const secondHalf = [
    cut((stack[0] as Stacked).lower, "slab", "half turn"),
    ...stack.slice(0, last).map((one) => cut(upperFace(one) + sawing.kerf, one)),
  ];
  return { cuts: [...firstHalf, ...secondHalf], lastOnBed: sawn(stays, face, sides, sawing) };
}

/**
 * @param up 1 while the face looks up from which heights are counted, -1 when the log is turned over
 * @returns makes the cut whose blade runs on the bark's side of a plane
 */
function cutter(setting: Setting, sawing: Sawing, up: 1 | -1 = 1) {
  const { face, sides, pithHeight, smallEndRaised } = setting;
  return (plane: number, frees: Stacked | "slab", turn: Turn = "none"): Cut => {
    const [lower, upper] = up === 1 ? [plane, plane + sawing.kerf] : [plane - sawing.kerf, plane];
    return {
      turn,
      smallEndRaised: inches(smallEndRaised),
      headReading: inches(up === 1 ? pithHeight + plane : pithHeight - plane),
      frees: frees === "slab" ? "slab" : sawn(frees, face, sides, sawing),
      kerfIn: asFirstLaid(outline(sides.left, sides.right, lower, upper), face),
    };
  };
}

/** The one that is too thick to pass above the blade; else the one nearest the pith that the blade can be set above. */
function lastOnBed(stack: readonly Stacked[], bladeAboveBed: number, throat: number): number {
  const tooThick = stack.findIndex(({ flitch }) => flitch.thickness > throat + HAIR);
  if (tooThick >= 0) return tooThick;
  const fromPith = (i: number) => Math.abs((stack[i] as Stacked).lower + (stack[i] as Stacked).flitch.thickness / 2);
  const possible = [...stack.keys()].filter((i) => (stack[i] as Stacked).flitch.thickness + HAIR >= bladeAboveBed);
  return possible.reduce((nearest, i) => (fromPith(i) < fromPith(nearest) - HAIR ? i : nearest));
}
