import { inches } from "../../basis/units";
import type { Cut } from "../cutList";
import { outline, type Outline } from "../outline";
import { markFrom } from "../scale";
import { laid } from "../sawnFlitch";
import type { SawJob } from "../sawingPattern";
import { onBark, type Turn } from "../setting";
import type { Peel } from "./bestQuarter";
import type { Quarter } from "./fourQuarters";
import { woodOff } from "./offSawnFace";
import { barkAlong, otherFace, ringsSlantAt, seenFrom, type SawnFace } from "./quarterShape";

/**
 * Through the pith, level; then through each half, stood on its edge. On a mill with a scale both ends are raised by as
 * much as the blade then stands on a mark.
 */
export function splits({ lying, kerf, scaleStep }: SawJob): readonly Cut[] {
  const half = kerf / 2;
  const through = (face: "top" | "right") => {
    const { pithHeight, ...raised } = onBark(lying, face);
    return settingAt(pithHeight - half, raised, scaleStep);
  };
  const onEdge = through("right");
  return [
    { ...through("top"), turn: "none", frees: "half", kerfIn: outline(-Infinity, Infinity, 0 - half, half) },
    { ...onEdge, turn: "quarter turn", frees: "quarter", kerfIn: outline(0 - half, half, half, Infinity) },
    { ...onEdge, turn: "next half", frees: "quarter", kerfIn: outline(0 - half, half, -Infinity, 0 - half) },
  ];
}

interface Raised {
  readonly smallEndRaised: number;
  readonly largeEndRaised: number;
}

/** A setting of the head over wood that lies as it is told, raised to the next mark where there is a scale. */
function settingAt(height: number, { smallEndRaised, largeEndRaised }: Raised, scaleStep: number | undefined) {
  const headReading = markFrom(height, scaleStep);
  const by = headReading - height;
  const large = largeEndRaised + by;
  return {
    smallEndRaised: inches(smallEndRaised + by),
    ...(large > 0 && { largeEndRaised: inches(large) }),
    headReading: inches(headReading),
  };
}

/** A quarter, from its first cut to its last. */
export function quarterCuts(quarter: Quarter, peels: readonly Peel[], job: SawJob): readonly Cut[] {
  const cuts: Cut[] = [];
  const standing = { flat: job.kerf / 2, upright: job.kerf / 2 };
  let last: SawnFace | undefined;
  const turnTo = (off: SawnFace): Turn => {
    const turn = last === undefined ? "next quarter" : last === off ? "none" : "quarter turn";
    last = off;
    return turn;
  };
  for (const peel of peels) {
    const { off, from, then } = peel;
    const other = standing[otherFace(off)];
    if (from > standing[off]) {
      cuts.push({ ...sawnAway(quarter, off, standing[off], from, other, job), turn: turnTo(off) });
    }
    cuts.push({ ...peeled(quarter, peel, other, job), turn: turnTo(off) });
    standing[off] = then;
  }
  return cuts;
}

/** One cut that frees a flitch. */
function peeled(quarter: Quarter, { flitch, off, from }: Peel, other: number, job: SawJob): Omit<Cut, "turn"> {
  const { lying, kerf, wane } = job;
  const { thickness, width, length } = flitch;
  const upper = from + thickness;
  const seen = seenFrom(off, quarter, lying, kerf);
  const wood = woodOff(seen.to(length), from, thickness, wane)?.left ?? other;
  const start = Math.max(other, wood, ringsSlantAt(seen, from + thickness / 2) - width / 2);
  const place = inEndView(quarter, off);
  const freed = laid(flitch, "top", start, from, { left: other, right: Infinity }, job);
  return {
    ...onItsBark(quarter, off, upper + kerf, other, job),
    frees: {
      ...freed,
      outline: place(freed.outline),
      boards: freed.boards.map((one) => ({ ...one, outline: place(one.outline) })),
    },
    kerfIn: place(outline(other, Infinity, upper, upper + kerf)),
  };
}

/** One that saws wood away off a face that stood at `from`, so that it comes to lie at `to`. */
function sawnAway(
  quarter: Quarter,
  off: SawnFace,
  from: number,
  to: number,
  other: number,
  job: SawJob,
): Omit<Cut, "turn"> {
  const place = inEndView(quarter, off);
  return {
    ...onItsBark(quarter, off, to, other, job),
    frees: "slab",
    kerfIn: place(outline(other, Infinity, Math.max(from, to - job.kerf), to)),
  };
}

/**
 * The sawn face looks up and lies level, the bark lies on the bed. What stays below the blade reaches from the cut to
 * the bark at its farthest, next to the other sawn face:
 *
 *     z = max over the log of (v0 + B sqrt(1 - (p - u0)^2 / A^2)) - c
 *
 *     c, p    distance of the cut and of the other face from the pith                        [in]
 *     A, B    half the diameters of a section, along this face and square to it; of a straight log at its large end [in]
 *     u0, v0  its middle, where the log is bent or the pith runs outwards                    [in]
 */
function onItsBark(quarter: Quarter, off: SawnFace, cut: number, other: number, { lying, kerf, scaleStep }: SawJob) {
  const { all, largeEnd, smallEnd } = seenFrom(otherFace(off), quarter, lying, kerf);
  const bed = barkAlong(all, other);
  const raised = {
    smallEndRaised: bed - barkAlong([smallEnd], other),
    largeEndRaised: bed - barkAlong([largeEnd], other),
  };
  return settingAt(bed - cut, raised, scaleStep);
}

/** From where a flitch lies as its face looks up to the end view: the quarter to the right and above, or its mirror image. */
const inEndView =
  ({ isRight, isUpper }: Quarter, off: SawnFace) =>
  (one: Outline): Outline => {
    const first = off === "flat" ? one : outline(one.lower, one.upper, one.left, one.right);
    const across = isRight ? first : outline(0 - first.right, 0 - first.left, first.lower, first.upper);
    return isUpper ? across : outline(across.left, across.right, 0 - across.upper, 0 - across.lower);
  };
