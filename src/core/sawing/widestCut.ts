import type { Sides } from "./sides";
import { halfFace, sectionAt, sectionsTo, type LyingLog, type Section } from "./lyingLog";
import type { Face } from "./outline";

/** Sections of the whole log where a face can be widest; of a symmetrical log that is its large end. */
const sectionsOf = (log: LyingLog, face: Face): readonly Section[] =>
  log.isSymmetrical ? [sectionAt(log, 0, face)] : sectionsTo(log, log.log.length, face);

/** The widest face that a plane can open in the log, with a face of it looking up. [in] */
export const widestFace = (log: LyingLog, face: Face): number =>
  Math.max(...sectionsOf(log, face).map(({ a }) => 2 * a));

/**
 * Where a cant's faces must not lie: one of them at or under `low`, the other at or over `high`. So the pith runs in
 * the cant somewhere along the log, and no face is wider than the saw can cut.
 */
export function tooWideBetween(
  log: LyingLog,
  face: Face,
  widestCut: number,
): { readonly low: number; readonly high: number } {
  const sections = sectionsOf(log, face);
  const wide = sections.filter(({ a }) => 2 * a > widestCut);
  if (wide.length === 0) {
    const heights = sections.map(({ v }) => v);
    return { low: Math.max(...heights), high: Math.min(...heights) };
  }
  const reach = ({ a, b }: Section) => b * Math.sqrt(1 - (widestCut / (2 * a)) ** 2);
  return {
    low: Math.min(...wide.map((section) => section.v - reach(section))),
    high: Math.max(...wide.map((section) => section.v + reach(section))),
  };
}

/** Width of the face that a plane opens between sides that are sawn already, where it is widest. [in] */
export function faceBetween(log: LyingLog, face: Face, plane: number, sides: Sides): number {
  const widths = sectionsOf(log, face).map((section) => {
    const half = halfFace(section, plane - section.v);
    return half === undefined ? 0 : Math.min(section.u + half, sides.right) - Math.max(section.u - half, sides.left);
  });
  return Math.max(0, ...widths);
}
