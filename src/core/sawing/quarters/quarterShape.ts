import { sectionAt, type LyingLog } from "../lyingLog";

/** Which of the two sawn faces of a quarter a flitch comes off: the one that runs across the end view, or the upright one. */
export type SawnFace = "flat" | "upright";

/** Half the diameters of a section, along a sawn face of the quarter and square to it. [in] */
export interface HalfDiameters {
  readonly along: number;
  readonly square: number;
}

/** Of a straight log on split taper, a distance from its large end [ft]. */
export function halfDiameters(lying: LyingLog, face: SawnFace, fromLargeEnd: number): HalfDiameters {
  const { a, b } = sectionAt(lying, fromLargeEnd, "top");
  return face === "flat" ? { along: a, square: b } : { along: b, square: a };
}

/**
 * How far along a sawn face, for every inch square to it, the growth rings meet the face at 45 degrees: A^2 / B^2.
 *
 *     A, B  half the diameters half-way up the log, along the face and square to it  [in]
 *
 * The rings of an oval log are taken as ellipses of its own shape; those of a round one are circles, A = B.
 */
export function slantOf(lying: LyingLog, face: SawnFace): number {
  const { along, square } = halfDiameters(lying, face, lying.log.length / 2);
  return (along / square) ** 2;
}

/** How far along a face a plane square to it meets the bark; 0 where it misses the log. [in] */
export const chordOf = ({ along, square }: HalfDiameters, plane: number): number =>
  plane < square ? (along / square) * Math.sqrt(square ** 2 - plane ** 2) : 0;
