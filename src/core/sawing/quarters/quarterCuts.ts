import { inches } from "../../basis/units";
import type { Cut } from "../cutList";
import { outline, type Outline } from "../outline";
import { laid } from "../sawnFlitch";
import type { SawJob } from "../sawingPattern";
import { onBark } from "../setting";
import type { Peel } from "./bestQuarter";
import { chordOf, halfDiameters, slantOf } from "./quarterShape";

/** Through the pith, level; then through each half, stood on its edge. */
export function splits({ lying, kerf }: SawJob): readonly Cut[] {
  const half = kerf / 2;
  const through = (face: "top" | "right") => {
    const { pithHeight, smallEndRaised } = onBark(lying, face);
    return { smallEndRaised: inches(smallEndRaised), headReading: inches(pithHeight - half) };
  };
  const onEdge = through("right");
  return [
    { ...through("top"), turn: "none", frees: "half", kerfIn: outline(-Infinity, Infinity, 0 - half, half) },
    { ...onEdge, turn: "quarter turn", frees: "quarter", kerfIn: outline(0 - half, half, half, Infinity) },
    { ...onEdge, turn: "next half", frees: "quarter", kerfIn: outline(0 - half, half, -Infinity, 0 - half) },
  ];
}

/** Where a quarter lies in the end view: the first one to the right and above the pith, each other a mirror image of it. */
type InEndView = (one: Outline) => Outline;

const asItLies: InEndView = (one) => one;
const toTheLeft: InEndView = ({ left, right, lower, upper }) => outline(0 - right, 0 - left, lower, upper);
const below: InEndView = ({ left, right, lower, upper }) => outline(left, right, 0 - upper, 0 - lower);
const fourQuarters: readonly InEndView[] = [asItLies, below, (one) => toTheLeft(below(one)), toTheLeft];

/** The four quarters are sawn alike. */
export function quarters(peels: readonly Peel[], job: SawJob): readonly Cut[] {
  return fourQuarters.flatMap((quarter) =>
    peels.map((peel, i): Cut => {
      const before = peels[i - 1];
      const turn = !before ? "next quarter" : before.flat === peel.flat ? "none" : "quarter turn";
      return { ...peeled(peel, quarter, job), turn };
    }),
  );
}

/**
 * One cut: the sawn face it comes off looks up and lies level, the bark lies on the bed. What stays below the blade
 * reaches from the cut to the bark at its farthest, next to the other sawn face:
 *
 *     z = B sqrt(1 - p^2 / A^2) - a - (t + k)
 *
 *     a, p  distance of this face and of the other one from the pith                    [in]
 *     A, B  half the diameters of the large end, along this face and square to it       [in]
 */
function peeled({ flitch, flat, across, up }: Peel, quarter: InEndView, job: SawJob): Omit<Cut, "turn"> {
  const { lying, log, kerf } = job;
  const face = flat ? "flat" : "upright";
  const [from, other] = flat ? [up, across] : [across, up];
  const bark = (fromLargeEnd: number) => {
    const { along, square } = halfDiameters(lying, face, fromLargeEnd);
    return chordOf({ along: square, square: along }, other);
  };
  const { thickness, width } = flitch;
  const start = Math.max(other, (from + thickness / 2) * slantOf(lying, face) - width / 2);
  const place = (one: Outline) => quarter(flat ? one : mirrored(one));
  const freed = laid(flitch, "top", start, from, { left: other, right: Infinity }, job);
  return {
    smallEndRaised: inches(bark(0) - bark(log.length)),
    headReading: inches(bark(0) - from - thickness - kerf),
    frees: {
      ...freed,
      outline: place(freed.outline),
      boards: freed.boards.map((one) => ({ ...one, outline: place(one.outline) })),
    },
    kerfIn: place(outline(other, Infinity, from + thickness, from + thickness + kerf)),
  };
}

/** Across and up exchanged. */
const mirrored = ({ left, right, lower, upper }: Outline) => outline(lower, upper, left, right);
