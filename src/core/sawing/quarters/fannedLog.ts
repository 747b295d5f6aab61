import { sectionAt, type LyingLog, type Section } from "../lyingLog";
import { outline, type Outline } from "../outline";
import type { Quarter } from "./fourQuarters";

/**
 * A log that is split along its pith into quarters, each of which is then sawn parallel to its own bark. Seen along the
 * saw planes of a quarter, the bark farthest from the pith runs level and the pith runs outwards, by
 *
 *     a(0) - a(x) across,  b(0) - b(x) up
 *
 *     a(x), b(x)  half the diameters at x from the large end [in]
 *
 * so that a wedge of wood lies next to the pith, as thick at the large end as half of the taper. The end view is that of
 * the four quarters side by side as they are at the large end.
 */
export const fanned = (lying: LyingLog, kerf: number): LyingLog => ({ ...lying, splitKerf: kerf });

/** How far out the pith of a quarter lies at x from the large end, across and up; 0 where the log is not fanned. [in] */
export function fannedBy(lying: LyingLog, fromLargeEnd: number): { readonly across: number; readonly up: number } {
  if (lying.splitKerf === undefined) return { across: 0, up: 0 };
  const [here, largeEnd] = [sectionAt(lying, fromLargeEnd, "top"), sectionAt(lying, 0, "top")];
  return { across: largeEnd.a - here.a, up: largeEnd.b - here.b };
}

/**
 * The section at x that a piece of the end view is cut from, and the part of the piece where wood can be: beyond the cuts
 * that split the log. Those cuts themselves, and all pieces of a log that is not fanned, are taken as they are.
 */
export function cutFrom(lying: LyingLog, piece: Outline, fromLargeEnd: number): { section: Section; within: Outline } {
  const section = sectionAt(lying, fromLargeEnd, "top");
  const quarter = lying.splitKerf === undefined ? undefined : quarterOf(piece);
  if (!quarter) return { section, within: piece };
  const half = (lying.splitKerf ?? 0) / 2;
  const { across, up } = fannedBy(lying, fromLargeEnd);
  const { isRight, isUpper } = quarter;
  const { left, right, lower, upper } = piece;
  return {
    section: {
      ...section,
      u: section.u + (isRight ? across : 0 - across),
      v: section.v + (isUpper ? up : 0 - up),
    },
    within: outline(
      beyond(left, isRight, across + half),
      beyond(right, isRight, across + half),
      beyond(lower, isUpper, up + half),
      beyond(upper, isUpper, up + half),
    ),
  };
}

/** The quarter that a piece lies in; undefined where it crosses one of the cuts that split the log. */
function quarterOf({ left, right, lower, upper }: Outline): Quarter | undefined {
  const isAside = left > 0 || right < 0;
  const isOffLevel = lower > 0 || upper < 0;
  return isAside && isOffLevel ? { isRight: left > 0, isUpper: lower > 0 } : undefined;
}

/** A place, or where wood begins when that is farther from the pith. */
const beyond = (place: number, isOutwards: boolean, from: number): number =>
  isOutwards ? Math.max(place, from) : Math.min(place, 0 - from);
