import { halfFace, LOOKED_AT, sectionAt, type LyingLog, type Section } from "../lyingLog";
import { fannedBy } from "./fannedLog";
import type { Quarter } from "./fourQuarters";

/** Which of the two sawn faces of a quarter a flitch comes off: the one that runs across the end view, or the upright one. */
export type SawnFace = "flat" | "upright";

export const otherFace = (face: SawnFace): SawnFace => (face === "flat" ? "upright" : "flat");

/** A section as a face sees it: u runs along the face and v square to it, both from the pith to the bark. */
export interface SeenSection extends Section {
  /** Where wood begins along the face and square to it, beyond the cuts that split the log. [in] */
  readonly fromU: number;
  readonly fromV: number;
}

/** A quarter as one of its sawn faces sees it. */
export interface QuarterSeen {
  /** Sections all along a flitch that runs from the large end; of a straight log its far end is enough. */
  readonly to: (length: number) => readonly SeenSection[];
  /** Sections all along the log; of a straight one its large end reaches as far as any. */
  readonly all: readonly SeenSection[];
  readonly largeEnd: SeenSection;
  readonly smallEnd: SeenSection;
  /** Half-way up the log, where the rings are judged. */
  readonly middle: SeenSection;
}

/** @param kerf of the cuts that split the log [in] */
export function seenFrom(face: SawnFace, { isRight, isUpper }: Quarter, lying: LyingLog, kerf: number): QuarterSeen {
  const { length: whole, sweep = 0 } = lying.log;
  const at = (fromLargeEnd: number): SeenSection => {
    const { u, v, a, b } = sectionAt(lying, fromLargeEnd, "top");
    const { across, up } = fannedBy(lying, fromLargeEnd);
    const [right, high] = [(isRight ? u : 0 - u) + across, (isUpper ? v : 0 - v) + up];
    const [beside, above] = [across + kerf / 2, up + kerf / 2];
    return face === "flat"
      ? { u: right, v: high, a, b, fromU: beside, fromV: above }
      : { u: high, v: right, a: b, b: a, fromU: above, fromV: beside };
  };
  const isStraight = sweep === 0 && lying.splitKerf === undefined;
  const to = (length: number) => (isStraight ? [at(length)] : LOOKED_AT.map((share) => at(length * share)));
  return {
    to,
    all: isStraight ? [at(0)] : to(whole),
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

/** How far along a face the bark reaches on a plane square to it, or where wood begins; 0 where the plane misses the log. [in] */
export const barkAlong = (sections: readonly SeenSection[], plane: number): number =>
  sections.reduce((most, one) => {
    const half = halfFace(one, Math.max(plane, one.fromV) - one.v);
    return half === undefined ? most : Math.max(most, one.u + half);
  }, 0);
