import { HAIR } from "../filling/hair";
import type { Flitch } from "../flitches";
import type { Sawing } from "../sawnFlitch";
import { chordOf, halfDiameters, slantOf, type SawnFace } from "./quarterShape";

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
 * The best flitches of one thickness off a sawn face, for every place a of that face, by the place p of the other one.
 * Its outer face reaches the bark at c; it begins at p, or where the rings meet its middle at 45 degrees, and must end
 * at c:
 *
 *     max(p + w, v A^2 / B^2 + w / 2) <= c
 *     c = A(l) sqrt(1 - m^2 / B(l)^2),   v = a + t / 2,   m = a + t - q t
 *
 *     A(l), B(l)  half the diameters of the log at the far end of the flitch, along the face and square to it  [in]
 *     A, B        the same half-way up the log, see slantOf                                                    [in]
 *
 * Sorted by where the other face may stand, so the best ones come first and the farthest last.
 */
export function stairsOff(
  face: SawnFace,
  group: readonly Flitch[],
  numberOfFirst: number,
  { first, places, step }: PlacesOfFaces,
  bladeAboveBed: number,
  { lying, kerf, wane }: Sawing,
): readonly Stairs[] {
  const fromBest = [...group.keys()].sort((x, y) => {
    const [one, other] = [group[x] as Flitch, group[y] as Flitch];
    return other.worth - one.worth || one.boards.length - other.boards.length;
  });
  const lengths = [...new Set(group.map(({ length }) => length))];
  const ends = lengths.map((length) => halfDiameters(lying, face, length));
  const endOf = group.map(({ length }) => lengths.indexOf(length));
  const largeEnd = halfDiameters(lying, face, 0);
  const slant = slantOf(lying, face);
  const { thickness } = group[0] as Flitch;
  const placeOf = (reach: number) => Math.floor((reach - first) / step + HAIR);
  return places.map((row) => {
    const place = first + row * step;
    // What is left below the blade must still reach above the lowest place of the blade.
    const farthest = placeOf(chordOf(largeEnd, place + thickness + kerf + bladeAboveBed));
    if (farthest < 0) return NONE;
    const chords = ends.map((end) => chordOf(end, place + thickness * (1 - wane)));
    const inner = (place + thickness / 2) * slant;
    const stairs: Stair[] = [];
    let filled = -1;
    for (const i of fromBest) {
      const { width, worth, boards } = group[i] as Flitch;
      const chord = chords[endOf[i] as number] as number;
      if (inner + width / 2 > chord + HAIR) continue;
      const last = Math.min(placeOf(chord - width), farthest);
      if (last <= filled) continue;
      stairs.push({ last, flitch: numberOfFirst + i, worth, boards: boards.length });
      filled = last;
      if (filled === farthest) break;
    }
    return stairs;
  });
}

const NONE: Stairs = [];
