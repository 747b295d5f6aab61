import { HAIR } from "../filling/hair";
import type { Flitch } from "../flitches";
import { commonFace } from "../room";
import type { Sawing } from "../sawnFlitch";
import { barkAlong, ringsSlantAt, type QuarterSeen, type SeenSection } from "./quarterShape";

/** From which place on towards the pith a flitch is the best there is. */
export interface Stair {
  /** The farthest place of the other face, in steps. */
  readonly last: number;
  /** Number of the flitch among all. */
  readonly flitch: number;
  readonly worth: number;
  readonly boards: number;
}

/** The best flitches of one thickness off a sawn face, the best first. */
export type Stairs = readonly Stair[];

export interface PlacesOfFaces {
  /** Of a face nearest the pith. [in] */
  readonly first: number;
  /** In steps from there. */
  readonly places: readonly number[];
  /** [in] */
  readonly step: number;
}

/**
 * Where wood lies on both faces of a slice all along a length, beyond the cuts that split the log. Undefined where there
 * is none somewhere.
 */
export function woodOff(sections: readonly SeenSection[], from: number, thickness: number, wane: number) {
  const { fromU, fromV } = sections.at(-1) as SeenSection; // the pith runs outwards, if it does
  if (from < fromV - HAIR) return undefined;
  const wood = commonFace(sections, from, thickness, wane);
  return wood && { left: Math.max(wood.left, fromU), right: wood.right };
}

/**
 * The best flitches of one thickness off a sawn face, for every place a of that face, by the place p of the other one.
 * Each begins at p or farther out, where wood does and the rings meet its middle at 45 degrees, and must end at the bark:
 *
 *     max(p, left, r - w / 2) + w <= right,   r  see ringsSlantAt
 *
 * Sorted by where the other face may stand, so the best ones come first and the farthest last.
 */
export function stairsOff(
  seen: QuarterSeen,
  group: readonly Flitch[],
  numberOfFirst: number,
  { first, places, step }: PlacesOfFaces,
  bladeAboveBed: number,
  { kerf, wane }: Sawing,
): readonly Stairs[] {
  const fromBest = [...group.keys()].sort((x, y) => {
    const [one, other] = [group[x] as Flitch, group[y] as Flitch];
    return other.worth - one.worth || one.boards.length - other.boards.length;
  });
  const lengths = [...new Set(group.map(({ length }) => length))];
  const ends = lengths.map((length) => seen.to(length));
  const endOf = group.map(({ length }) => lengths.indexOf(length));
  const { thickness } = group[0] as Flitch;
  const placeOf = (reach: number) => Math.floor((reach - first) / step + HAIR);
  return places.map((row) => {
    const place = first + row * step;
    // What is left below the blade must still reach above the lowest place of the blade.
    const farthest = placeOf(barkAlong(seen.all, place + thickness + kerf + bladeAboveBed));
    if (farthest < 0) return NONE;
    const wood = ends.map((sections) => woodOff(sections, place, thickness, wane));
    const slant = ringsSlantAt(seen, place + thickness / 2);
    const stairs: Stair[] = [];
    let filled = -1;
    for (const i of fromBest) {
      const { width, worth, boards } = group[i] as Flitch;
      const span = wood[endOf[i] as number];
      if (!span || Math.max(span.left, slant - width / 2) + width > span.right + HAIR) continue;
      const last = Math.min(placeOf(span.right - width), farthest);
      if (last <= filled) continue;
      stairs.push({ last, flitch: numberOfFirst + i, worth, boards: boards.length });
      filled = last;
      if (filled === farthest) break;
    }
    return stairs;
  });
}

const NONE: Stairs = [];
