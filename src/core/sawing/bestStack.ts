import { inches } from "../basis/units";
import { candidates, fromOtherEnd } from "./candidates";
import type { Sides } from "./sides";
import { onBark } from "./setting";
import { waysByBed } from "./filling/fill";
import type { BedKind, Group } from "./filling/group";
import { bestThrough } from "./filling/fillThrough";
import { HAIR } from "./filling/hair";
import type { Slot, Way } from "./filling/way";
import type { Flitch } from "./flitches";
import type { Face } from "./outline";
import type { RoomFor } from "./room";
import { markFrom, placesOnScale } from "./scale";
import type { Sawing } from "./sawnFlitch";

/** Which pieces pass above the blade, and which can stay under it. */
export interface BedLimits {
  readonly bladeAboveBed: number;
  readonly throat: number;
}

/**
 * The best filling of a whole log, or of a cant on its edge, with one piece left on the bed. On a scale that piece has
 * a thickness of its own, and so it is told apart from the others.
 */
export function bestStack(
  groups: readonly (readonly Flitch[])[],
  face: Face,
  sides: Sides,
  roomFor: RoomFor,
  { bladeAboveBed, throat }: BedLimits,
  { lying, kerf, scaleStep }: Sawing,
): Way<Flitch> | undefined {
  if (scaleStep !== undefined) {
    const freed = candidates(roomFor, fitThroat(groups, throat), face, sides);
    const left = candidates(roomFor, onBed(groups, bladeAboveBed, scaleStep), face, sides);
    const onScale = placesOnScale(scaleStep, 0 - onBark(lying, face).pithHeight, kerf);
    return waysByBed([...withKind(freed, 0), ...withKind(left, 2)], kerf, {
      onScale,
    })[2]?.at(-1);
  }
  const slots = candidates(roomFor, groups, face, sides);
  const kinds = (list: readonly (readonly Slot<Flitch>[])[]) =>
    list.flatMap((group) => {
      const kind = kindOf(group[0]?.extent ?? 0, bladeAboveBed, throat);
      return kind === undefined ? [] : withKind([group], kind);
    });
  const fromBelow = kinds(slots);
  return bestThrough(fromBelow, lying.isPlain ? fromBelow : kinds(fromOtherEnd(slots)), kerf);
}

/** What a piece of a thickness is to the bed; undefined when it can neither stay there nor pass above the blade. */
function kindOf(thickness: number, bladeAboveBed: number, throat: number): BedKind | undefined {
  const stays = thickness + HAIR >= bladeAboveBed;
  if (thickness > throat + HAIR) return stays ? 2 : undefined;
  return stays ? 1 : 0;
}

const withKind = (groups: readonly (readonly Slot<Flitch>[])[], kind: BedKind): readonly Group<Flitch>[] =>
  groups.map((slots) => ({ slots, kind }));

export const fitThroat = (groups: readonly (readonly Flitch[])[], throat: number): readonly (readonly Flitch[])[] =>
  groups.filter(([first]) => first && first.thickness <= throat + HAIR);

/** The same flitches as the last piece on the bed, those that the blade can be set above. */
function onBed(groups: readonly (readonly Flitch[])[], bladeAboveBed: number, step: number) {
  return groups
    .map((group) =>
      group.map((flitch) => ({
        ...flitch,
        thickness: inches(markFrom(flitch.listed, step)),
        isLeftOnBed: true,
      })),
    )
    .filter(([first]) => first && first.thickness + HAIR >= bladeAboveBed);
}
