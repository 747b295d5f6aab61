import { inches } from "../basis/units";
import { fromOtherEnd } from "./candidates";
import { ceilingOf, type Ceiling } from "./filling/ceiling";
import { waysByBed } from "./filling/fill";
import { bestThrough } from "./filling/fillThrough";
import type { BedKind, Group } from "./filling/group";
import { HAIR } from "./filling/hair";
import type { Way } from "./filling/way";
import type { Flitch } from "./flitches";
import type { Face } from "./outline";
import type { Sawing } from "./sawnFlitch";
import { markFrom, placesOnScale } from "./scale";
import { onBark } from "./setting";

/** Which pieces pass above the blade, and which can stay under it. */
export interface BedLimits {
  readonly bladeAboveBed: number;
  readonly throat: number;
}

/** Flitches of one thickness, and what they are to the bed. */
export interface PartOnBed {
  readonly flitches: readonly Flitch[];
  readonly kind: BedKind;
}

/**
 * Flitches of each thickness by what they are to the bed, without those that can neither stay there nor pass above the
 * blade. On a scale the piece that stays has a thickness of its own, and so it is told apart from the others.
 */
export function partsOnBed(
  groups: readonly (readonly Flitch[])[],
  { bladeAboveBed, throat }: BedLimits,
  scaleStep: number | undefined,
): readonly PartOnBed[] {
  if (scaleStep !== undefined) {
    const freed = fitThroat(groups, throat).map((flitches): PartOnBed => ({ flitches, kind: 0 }));
    const left = leftOnBed(groups, bladeAboveBed, scaleStep).map((flitches): PartOnBed => ({ flitches, kind: 2 }));
    return [...freed, ...left];
  }
  return groups.flatMap((flitches) => {
    const kind = kindOf(flitches[0]?.thickness ?? 0, bladeAboveBed, throat);
    return kind === undefined ? [] : [{ flitches, kind }];
  });
}

/** What a piece of a thickness is to the bed; undefined when it can neither stay there nor pass above the blade. */
function kindOf(thickness: number, bladeAboveBed: number, throat: number): BedKind | undefined {
  const stays = thickness + HAIR >= bladeAboveBed;
  if (thickness > throat + HAIR) return stays ? 2 : undefined;
  return stays ? 1 : 0;
}

export const fitThroat = (groups: readonly (readonly Flitch[])[], throat: number): readonly (readonly Flitch[])[] =>
  groups.filter(([first]) => first && first.thickness <= throat + HAIR);

/** The same flitches as the last piece on the bed, those that the blade can be set above. */
function leftOnBed(groups: readonly (readonly Flitch[])[], bladeAboveBed: number, step: number) {
  return groups
    .map((group) =>
      group.map((flitch) => ({ ...flitch, thickness: inches(markFrom(flitch.listed, step)), isLeftOnBed: true })),
    )
    .filter(([first]) => first && first.thickness + HAIR >= bladeAboveBed);
}

/** The best filling with one piece left on the bed; groups of slots are as they are seen from below. */
export function bestOnBed(
  groups: readonly Group<Flitch>[],
  face: Face,
  { lying, kerf, scaleStep }: Sawing,
  least?: Least,
): Way<Flitch> | undefined {
  const ceiling = (seen: readonly Group<Flitch>[], step: number) => ceilingOf(seen, kerf, step);
  if (scaleStep !== undefined) {
    const onScale = placesOnScale(scaleStep, 0 - onBark(lying, face).pithHeight, kerf);
    const atLeast = least && { worth: least.worth, ceiling: least.ceiling };
    return waysByBed(groups, kerf, { onScale, ...(atLeast && { atLeast }) })[2]?.at(-1);
  }
  const fromAbove = lying.isSymmetrical
    ? groups
    : groups.map(({ slots, kind }) => ({ slots: fromOtherEnd(slots), kind }));
  const atLeast = least && {
    worth: least.worth,
    fromBelow: least.ceiling,
    fromAbove: fromAbove === groups ? least.ceiling : ceiling(fromAbove, least.step),
  };
  return bestThrough(groups, fromAbove, kerf, atLeast);
}

/** A filling worth less may be missed; the ceiling over the same slots, and the step of its cells. */
export interface Least {
  readonly worth: number;
  readonly ceiling: Ceiling;
  readonly step: number;
}
