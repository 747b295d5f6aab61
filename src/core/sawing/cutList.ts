import { inches, type Inches } from "../basis/units";
import { HAIR } from "./filling/hair";
import { asFirstLaid, outline, type Outline } from "./outline";
import { onSawnFace, type Setting, type Turn } from "./setting";
import { sawn, type Sawing, type SawnFlitch } from "./sawnFlitch";
import { upperFace, upsideDown, type Stacked } from "./stack";

/** One pass of the blade, in the order of work. */
export interface Cut {
  readonly turn: Turn;
  /** How far the small end is raised so that the pith lies level (split taper); 0 on a sawn face. [in] */
  readonly smallEndRaised: Inches;
  /** The same of the large end, where a swept log lies on its belly, or a quarter is raised to a mark; left out: 0. [in] */
  readonly largeEndRaised?: Inches;
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

/**
 * The cuts that open a face: the slab, then each flitch, down to a plane. A plane at y from the pith stands at
 *
 *     z = y + height of the pith above the bed
 *
 * @param flitches from the plane outwards, each a kerf or more above what is under it
 */
export function openFace(
  flitches: readonly Stacked[],
  plane: number,
  setting: Setting,
  sawing: Sawing,
): readonly Cut[] {
  return run(flitches, plane, cutter(setting, sawing), setting.turn, sawing.kerf);
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
 * @param stack from the lowest to the highest, one kerf or more apart; one at least can stay on the bed
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
  const secondHalf = run(upsideDown(stack.slice(0, last)), 0 - stays.lower, cut, "half turn", sawing.kerf);
  return {
    cuts: [...firstHalf, ...secondHalf],
    lastOnBed: sawn(stays, face, sides, sawing),
  };
}

type Cutter = (plane: number, frees: Stacked | "slab", turn: Turn, kerf: number) => Cut;

/** From the bark down to a plane: each flitch, and each strip between two where they lie more than a kerf apart. */
function run(flitches: readonly Stacked[], plane: number, cut: Cutter, turn: Turn, kerf: number): readonly Cut[] {
  const cuts: Cut[] = [];
  let sawnTo = Infinity;
  const clearTo = (face: number) => {
    if (face > sawnTo - HAIR) return;
    cuts.push(cut(face, "slab", cuts.length === 0 ? turn : "none", Math.min(kerf, sawnTo - face)));
    sawnTo = face;
  };
  for (const one of [...flitches].reverse()) {
    clearTo(upperFace(one));
    sawnTo = one.lower - kerf;
    cuts.push(cut(sawnTo, one, "none", kerf));
  }
  clearTo(plane);
  return cuts;
}

/**
 * @param up 1 while the face looks up from which heights are counted, -1 when the log is turned over
 * @returns makes the cut whose blade runs on the bark's side of a plane, counted from the pith towards that bark
 */
function cutter(setting: Setting, sawing: Sawing, up: 1 | -1 = 1): Cutter {
  const { face, sides, pithHeight, smallEndRaised, largeEndRaised } = setting;
  return (fromPith, frees, turn, kerf) => {
    const plane = up * fromPith;
    const [lower, upper] = up === 1 ? [plane, plane + kerf] : [plane - kerf, plane];
    const one = frees === "slab" ? frees : up === 1 ? frees : { ...frees, lower: 0 - upperFace(frees) };
    return {
      turn,
      smallEndRaised: inches(smallEndRaised),
      ...(largeEndRaised > 0 && { largeEndRaised: inches(largeEndRaised) }),
      headReading: inches(up === 1 ? pithHeight + plane : pithHeight - plane),
      frees: one === "slab" ? one : sawn(one, face, sides, sawing),
      kerfIn: asFirstLaid(outline(sides.left, sides.right, lower, upper), face),
    };
  };
}

/** The one that was meant to be, or is too thick to pass above the blade; else the one nearest the pith that the blade can be set above. */
function lastOnBed(stack: readonly Stacked[], bladeAboveBed: number, throat: number): number {
  const known = stack.findIndex(({ flitch }) => flitch.isLeftOnBed);
  if (known >= 0) return known;
  const tooThick = stack.findIndex(({ flitch }) => flitch.thickness > throat + HAIR);
  if (tooThick >= 0) return tooThick;
  const fromPith = (i: number) => Math.abs((stack[i] as Stacked).lower + (stack[i] as Stacked).flitch.thickness / 2);
  const possible = [...stack.keys()].filter((i) => (stack[i] as Stacked).flitch.thickness + HAIR >= bladeAboveBed);
  return possible.reduce((nearest, i) => (fromPith(i) < fromPith(nearest) - HAIR ? i : nearest));
}
