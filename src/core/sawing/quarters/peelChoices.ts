import { HAIR } from "../filling/hair";
import type { Flitch } from "../flitches";
import type { LyingLog } from "../lyingLog";
import { isRound, thickestOf } from "../sawLog";
import type { Sawing } from "../sawnFlitch";
import { stairsOff, type Stairs } from "./offSawnFace";
import type { Quarter } from "./fourQuarters";
import { seenFrom, type SawnFace } from "./quarterShape";

export interface QuarterOrder {
  readonly groups: readonly (readonly Flitch[])[];
  readonly bladeAboveBed: number;
  /** Settings are whole steps. [in] */
  readonly step: number;
}

/** What can be sawn off a quarter's two faces, wherever they stand. */
export interface PeelChoices {
  /**
   * Where a face can come to lie, in steps from its first place next to the pith: every sum of pitches; every step where
   * it can pay to saw wood away.
   */
  readonly places: readonly number[];
  /** For each thickness. */
  readonly thicknesses: readonly PeelThickness[];
  /** Off which place of a face something can be had, and how far the other one may stand then. */
  readonly reach: Readonly<Record<SawnFace, readonly number[]>>;
}

export interface PeelThickness {
  /** By the place of the face that is sawn. */
  readonly flat: readonly Stairs[];
  /** The very same where both faces look alike. */
  readonly upright: readonly Stairs[];
  /** For each place the number of the one a board and its kerf farther out; the count of places where there is none. */
  readonly next: readonly number[];
}

export function peelChoices(
  quarter: Quarter,
  { groups, bladeAboveBed, step }: QuarterOrder,
  sawing: Sawing,
): PeelChoices {
  const { log, lying, kerf } = sawing;
  const sweep = log.sweep ?? 0;
  const maySkip = mayPayToSkip(lying);
  const steps = Math.ceil((thickestOf(log) / 2 + sweep) / step) + 1;
  const pitches = groups.map(([one]) => pitchOf(one as Flitch, kerf, step));
  const places = placesOf(maySkip ? [1] : pitches, steps);
  const numberOf = new Map(places.map((place, i) => [place, i]));
  let numberOfFirst = 0;
  const thicknesses = groups.map((group, g): PeelThickness => {
    const off = (face: SawnFace) => {
      const seen = seenFrom(face, quarter, lying, kerf);
      return stairsOff(seen, group, numberOfFirst, { first: kerf / 2, places, step }, bladeAboveBed, sawing);
    };
    const flat = off("flat");
    const upright = facesAlike(lying) ? flat : off("upright");
    numberOfFirst += group.length;
    const pitch = pitches[g] as number;
    return { flat, upright, next: places.map((place) => numberOf.get(place + pitch) ?? places.length) };
  });
  const reachOff = (face: SawnFace) =>
    places.map((_, i) => Math.max(...thicknesses.map((one) => one[face][i]?.at(-1)?.last ?? -1)));
  const flat = reachOff("flat");
  return { places, thicknesses, reach: { flat, upright: facesAlike(lying) ? flat : reachOff("upright") } };
}

/** Whether both sawn faces of a quarter look alike. */
export const facesAlike = ({ log }: LyingLog): boolean => isRound(log) && (log.sweep ?? 0) === 0;

/** Whether wood may have to be sawn away next to the pith, where the pith is bent or runs outwards. */
export const mayPayToSkip = ({ log, splitKerf }: LyingLog): boolean => (log.sweep ?? 0) > 0 || splitKerf !== undefined;

/** A board and its kerf, in whole steps. */
const pitchOf = ({ thickness }: Flitch, kerf: number, step: number): number =>
  Math.ceil((thickness + kerf) / step - HAIR);

function placesOf(pitches: readonly number[], count: number): readonly number[] {
  const isReached = new Uint8Array(count);
  isReached[0] = 1;
  const places: number[] = [];
  for (let at = 0; at < count; at += 1) {
    if (isReached[at] === 0) continue;
    places.push(at);
    for (const pitch of pitches) if (at + pitch < count) isReached[at + pitch] = 1;
  }
  return places;
}
