import { halfFace, sectionAt, sectionsTo, type LyingLog, type Section } from "../lyingLog";

/** One of the four quarters: to which side of the planes that the log is split along it lies in the end view. */
export interface Quarter {
  readonly isRight: boolean;
  readonly isUpper: boolean;
}

export const fourQuarters: readonly Quarter[] = [
  { isRight: true, isUpper: true },
  { isRight: true, isUpper: false },
  { isRight: false, isUpper: false },
  { isRight: false, isUpper: true },
];

/** Which of the two sawn faces of a quarter a flitch comes off: the one that runs across the end view, or the upright one. */
export type SawnFace = "flat" | "upright";

export const otherFace = (face: SawnFace): SawnFace => (face === "flat" ? "upright" : "flat");

/** A quarter as one of its sawn faces sees it: u runs along the face and v square to it, both from the pith to the bark. */
export interface QuarterSeen {
  /** Sections all along a flitch that runs from the large end; of a straight log its far end is enough. */
  readonly to: (length: number) => readonly Section[];
  /** Sections all along the log; of a straight one its large end reaches as far as any. */
  readonly all: readonly Section[];
  readonly largeEnd: Section;
  readonly smallEnd: Section;
  /** Half-way up the log, where the rings are judged. */
  readonly middle: Section;
}

export function seenFrom(face: SawnFace, { isRight, isUpper }: Quarter, lying: LyingLog): QuarterSeen {
  const { length: whole, sweep = 0 } = lying.log;
  const seen = ({ u, v, a, b }: Section): Section => {
    const [across, up] = [isRight ? u : 0 - u, isUpper ? v : 0 - v];
    return face === "flat" ? { u: across, v: up, a, b } : { u: up, v: across, a: b, b: a };
  };
  const at = (fromLargeEnd: number) => seen(sectionAt(lying, fromLargeEnd, "top"));
  const to = (length: number) => (sweep > 0 ? sectionsTo(lying, length, "top").map(seen) : [at(length)]);
  return {
    to,
    all: sweep > 0 ? to(whole) : [at(0)],
    largeEnd: at(0),
    smallEnd: at(whole),
    middle: at(whole / 2),
  };
}

/**
 * How far along a face, from the pith, the growth rings meet the middle of a flitch at 45 degrees; v is how far that
 * middle lies from the face's plane through the pith.
 *
 *     u = u0 + |v - v0| A^2 / B^2
 *
 *     u0, v0  the pith half-way up the log, where it is bent                          [in]
 *     A, B    half the diameters half-way up the log, along the face and square to it [in]
 *
 * The rings of an oval log are taken as ellipses of its own shape; those of a round one are circles, A = B.
 */
export const ringsSlantAt = ({ middle: { u, v, a, b } }: QuarterSeen, at: number): number =>
  u + Math.abs(at - v) * (a / b) ** 2;

/** How far along a face the bark reaches on a plane square to it; 0 where the plane misses the log. [in] */
export const barkAlong = (sections: readonly Section[], plane: number): number =>
  sections.reduce(
    (most, section) => Math.max(most, section.u + (halfFace(section, plane - section.v) ?? -Infinity)),
    0,
  );
