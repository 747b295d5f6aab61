import type { Choice } from "../basis/choices";
import type { Face } from "./outline";
import { acrossLargeEnd, acrossSmallEnd, isRound, type SawLog } from "./sawLog";

/** How the saw planes run along the log. */
export interface Taper extends Choice {
  readonly id: "split" | "full";
}

/** Parallel to the pith: the small end is raised by half the taper. All four sides then have half of the taper each. */
export const splitTaper: Taper = {
  id: "split",
  title: "Split",
  aliases: ["Split taper", "Half taper"],
};

/**
 * Parallel to the bark: the log lies on its bark, not raised, and so it does again when it is turned by a quarter. The
 * two sides that lie down give boards of full length; the whole taper shows on the two that face them.
 */
export const fullTaper: Taper = {
  id: "full",
  title: "Full",
  aliases: ["Full taper", "Parallel to the bark"],
};

export const tapers: readonly Taper[] = [splitTaper, fullTaper];

/** A log as it is laid for the first cut. */
export interface LyingLog {
  readonly log: SawLog;
  readonly taper: Taper;
  /** True when the first diameter, and the sweep with it, stands upright; false when it lies level. */
  readonly upright: boolean;
  /**
   * Straight and sawn parallel to its pith: every section lies around the pith, and all along is told by the small end of
   * a board.
   */
  readonly isSymmetrical: boolean;
  /** Symmetrical and round: it looks the same from all sides. */
  readonly isPlain: boolean;
  /**
   * Kerf of the cuts that split it along its pith into quarters, each of which is then sawn parallel to its own bark; see
   * quarters/fannedLog.ts. Left out: it is not. [in]
   */
  readonly splitKerf?: number;
}

export const lying = (log: SawLog, taper: Taper = splitTaper, upright = false): LyingLog => {
  const hasTaper = log.smallEnd < log.largeEnd || acrossSmallEnd(log) < acrossLargeEnd(log);
  const isSymmetrical = (log.sweep ?? 0) === 0 && (taper.id === "split" || !hasTaper);
  return { log, taper, upright, isSymmetrical, isPlain: isSymmetrical && isRound(log) };
};

/** The ways to lay it that can make a difference. */
export function waysToLay(log: SawLog, taper: Taper): readonly LyingLog[] {
  const isTheSame = isRound(log) && (log.sweep ?? 0) === 0;
  return isTheSame ? [lying(log, taper)] : [lying(log, taper, false), lying(log, taper, true)];
}

/** An ellipse: where it lies in the end view, seen with some face of the log looking up. [in] */
export interface Section {
  /** Its middle, to the right of and above the line that the saw planes are measured from. */
  readonly u: number;
  readonly v: number;
  /** Half its width and half its height. */
  readonly a: number;
  readonly b: number;
}

/**
 * The section at x from the large end, seen with a face looking up.
 *
 *     sweep:       c(x) = 4 S x (L - x) / L^2, upwards where it stands upright, else to the right
 *     full taper:  the middle lies a(x) - a(0) to the right and b(x) - b(0) above, so that the bark on the left and
 *                  below runs along the saw planes; not so where it is split along its pith
 *
 *     S  sweep [in]    L  length [ft]    a(x), b(x)  half the diameters at x [in]
 */
export function sectionAt({ log, taper, upright, splitKerf }: LyingLog, x: number, face: Face): Section {
  const share = x / log.length;
  const first = (log.largeEnd - (log.largeEnd - log.smallEnd) * share) / 2;
  const second = (acrossLargeEnd(log) - (acrossLargeEnd(log) - acrossSmallEnd(log)) * share) / 2;
  const bow = 4 * (log.sweep ?? 0) * share * (1 - share);
  const [a, b] = upright ? [second, first] : [first, second];
  const [a0, b0] = upright ? [acrossLargeEnd(log) / 2, log.largeEnd / 2] : [log.largeEnd / 2, acrossLargeEnd(log) / 2];
  const isFull = taper.id === "full" && splitKerf === undefined;
  const right = (isFull ? a - a0 : 0) + (upright ? 0 : bow);
  const up = (isFull ? b - b0 : 0) + (upright ? bow : 0);
  switch (face) {
    case "top":
      return { u: right, v: up, a, b };
    case "right":
      return { u: 0 - up, v: right, a: b, b: a };
    case "bottom":
      return { u: 0 - right, v: 0 - up, a, b };
    case "left":
      return { u: up, v: 0 - right, a: b, b: a };
  }
}

/** Steps along a board at which its wood is looked at; what sweep can do between two of them is under S / 256. */
const STEPS = 16;
export const LOOKED_AT: readonly number[] = Array.from({ length: STEPS + 1 }, (_, i) => i / STEPS);

/** Sections all along a board that runs from the large end; of a symmetrical log its far end is enough. */
export const sectionsTo = (log: LyingLog, length: number, face: Face): readonly Section[] =>
  (log.isSymmetrical ? [1] : LOOKED_AT).map((share) => sectionAt(log, length * share, face));

/** Half the face that a plane at a distance above or below the middle of a section opens; undefined where it misses it. */
export function halfFace({ a, b }: Section, fromMiddle: number): number | undefined {
  const rest = 1 - (fromMiddle / b) ** 2;
  return rest < 0 ? undefined : a * Math.sqrt(rest);
}
