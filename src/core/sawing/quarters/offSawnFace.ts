import { HAIR } from "../filling/hair";
import type { Flitch } from "../flitches";
import { sectionAt } from "../lyingLog";
import type { Sawing } from "../sawnFlitch";

/** Which of the two sawn faces of a quarter a flitch comes off: the one that runs across the end view, or the upright one. */
export type SawnFace = "flat" | "upright";

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
 *     A, B        half the diameters of the log half-way, along the face and square to it  [in]
 *     A(l), B(l)  the same at l, the length of the flitch, from the large end              [in]
 *
 * The rings of an oval log are taken as ellipses of its own shape; those of a round one are circles, A = B.
 *
 * Sorted by where the other face may stand, so the best ones come first and the farthest last.
 */
export function stairsOff(
  face: SawnFace,
  group: readonly Flitch[],
  numberOfFirst: number,
  { first, places, step }: PlacesOfFaces,
  bladeAboveBed: number,
  { log, lying, kerf, wane }: Sawing,
): readonly Stairs[] {
  const halves = (length: number) => {
    const { a, b } = sectionAt(lying, length, "top");
    return face === "flat" ? { along: a, square: b } : { along: b, square: a };
  };
  const fromBest = [...group.keys()].sort((x, y) => {
    const [one, other] = [group[x] as Flitch, group[y] as Flitch];
    return other.worth - one.worth || one.boards.length - other.boards.length;
  });
  const lengths = [...new Set(group.map(({ length }) => length))];
  const ends = lengths.map(halves);
  const endOf = group.map(({ length }) => lengths.indexOf(length));
  const largeEnd = halves(0);
  const middle = halves(log.length / 2);
  const slant = (middle.along / middle.square) ** 2;
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

/** How far from the pith a plane meets the bark; 0 where it misses the log. */
function chordOf({ along, square }: { readonly along: number; readonly square: number }, plane: number): number {
  return plane < square ? (along / square) * Math.sqrt(square ** 2 - plane ** 2) : 0;
}
