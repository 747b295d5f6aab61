import { HAIR } from "./filling/hair";
import { sectionAt, type LyingLog } from "./lyingLog";
import type { Face } from "./outline";
import type { Sides } from "./sides";

/** How the log is turned before a cut. */
export type Turn = "none" | "quarter turn" | "half turn" | "next half" | "next quarter";

/** How the log lies when it is set for a run of cuts. */
export interface Setting {
  readonly turn: Turn;
  /** Which face of the log looks up. */
  readonly face: Face;
  /** The faces to the left and right that are sawn already. */
  readonly sides: Sides;
  /** Of the pith above the bed. [in] */
  readonly pithHeight: number;
  readonly largeEndRaised: number;
  readonly smallEndRaised: number;
}

/**
 * On its bark, where it comes lowest: the line that planes are measured from is so far above the bed, and the ends are
 * raised so far. A straight log on split taper lies on its large end, the small end raised by half the taper.
 */
export function onBark(log: LyingLog, face: Face) {
  const undersides = [0, 1 / 4, 1 / 2, 3 / 4, 1].map((share) => {
    const { v, b } = sectionAt(log, log.log.length * share, face);
    return v - b;
  });
  const lowest = Math.min(...undersides);
  const raised = (end: number) => (end - lowest < HAIR ? 0 : end - lowest);
  return {
    pithHeight: 0 - lowest,
    largeEndRaised: raised(undersides[0] as number),
    smallEndRaised: raised(undersides.at(-1) as number),
  };
}

/** On a sawn face, which lies level as far below the line that planes are measured from as it was sawn from it. */
export const onSawnFace = (fromPith: number) => ({
  pithHeight: fromPith,
  largeEndRaised: 0,
  smallEndRaised: 0,
});
