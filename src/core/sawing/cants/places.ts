import { HAIR } from "../filling/hair";
import { asGood, bestBelow, type Way } from "../filling/way";
import type { Flitch } from "../flitches";
import { onBark } from "../setting";
import type { Sawing } from "../sawnFlitch";
import { markFrom } from "../scale";
import type { CantOrder } from "./cantOrder";

/** A height of a cant, and the side boards that are left beside it there. */
export interface CantPlace {
  /** Of its middle above the pith. [in] */
  readonly offset: number;
  readonly under: Way<Flitch> | undefined;
  readonly over: Way<Flitch> | undefined;
  /** Of both together. */
  readonly worth: number;
  readonly pieces: number;
}

/** The side boards under a plane of the log, and, seen from above, over one. */
export interface BothSides {
  readonly under: readonly Way<Flitch>[];
  readonly over: readonly Way<Flitch>[];
}

/**
 * The heights of a cant that are worth trying, in runs from the pith outwards: each leaves better side boards than every
 * one before it in its run. Of a log that can be set anywhere one run, at the steps of the side boards; see bestCant. On
 * a scale one run up and one down, with the faces on its marks.
 *
 * @param farthest no cant farther from the pith is tried [in]
 */
export function placesOf(
  thickness: number,
  farthest: number,
  { facesBeyond }: CantOrder,
  { under, over }: BothSides,
  { lying, scaleStep }: Sawing,
): readonly (readonly CantPlace[])[] {
  const half = thickness / 2;
  const most = Math.min(half - facesBeyond.high, farthest) + HAIR;
  if (most < 0) return [];
  const at = (offset: number) => placeOf(offset, bestBelow(under, offset - half), bestBelow(over, 0 - offset - half));
  if (scaleStep === undefined) {
    const steps = under.map(({ free }) => free + half).filter((offset) => offset > 0 && offset <= most);
    return [better([0, ...steps].map(at))];
  }
  const onMark = 0 - onBark(lying, "top").pithHeight;
  const first = onMark + markFrom(half - onMark, scaleStep) - half;
  const marks = (from: number, step: number) =>
    Array.from({ length: Math.max(0, Math.floor((most - Math.abs(from)) / scaleStep) + 1) }, (_, i) => from + i * step);
  return [marks(first, scaleStep), marks(first - scaleStep, 0 - scaleStep)].map((run) => better(run.map(at)));
}

const placeOf = (offset: number, under: Way<Flitch> | undefined, over: Way<Flitch> | undefined): CantPlace => ({
  offset,
  under,
  over,
  worth: (under?.worth ?? 0) + (over?.worth ?? 0),
  pieces: (under?.pieces ?? 0) + (over?.pieces ?? 0),
});

function better(places: readonly CantPlace[]): readonly CantPlace[] {
  const kept: CantPlace[] = [];
  for (const place of places) {
    const last = kept.at(-1);
    if (!(last && asGood(last, place))) kept.push(place);
  }
  return kept;
}
