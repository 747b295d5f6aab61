import fc from "fast-check";
import { OutOfRange } from "../../src/core/basis/problem";
import type { Outline } from "../../src/core/sawing/outline";
import type { SawingPattern } from "../../src/core/sawing/sawingPattern";
import type { BestPlan } from "../../src/core/sawing/sawPlan";
import { board, planned, sawLog } from "./sawing";

/** A random log, list of boards, kerf and mill. */
export const anOrder = fc.record({
  smallEnd: fc.double({ min: 6, max: 26, noNaN: true }),
  taper: fc.double({ min: 0, max: 5, noNaN: true }),
  length: fc.double({ min: 4, max: 18, noNaN: true }),
  kerf: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  sizes: fc.uniqueArray(
    fc.record({ thickness: fc.constantFrom<number>(1, 1.25, 2, 4), width: fc.integer({ min: 3, max: 10 }) }),
    { minLength: 1, maxLength: 6, selector: ({ thickness, width }) => `${thickness} ${width}` },
  ),
  bladeAboveBed: fc.constantFrom(0, 0, 1, 2),
  throat: fc.constantFrom(Infinity, Infinity, 1.5, 4),
  waneAllowed: fc.constantFrom<number>(0, 0, 0, 30),
});
export type Order = typeof anOrder extends fc.Arbitrary<infer T> ? T : never;

/** Its plan; undefined where no board of the list can be had. */
export function planBy(pattern: SawingPattern, order: Order): BestPlan | undefined {
  const { smallEnd, taper, length, kerf, sizes, bladeAboveBed, throat, waneAllowed } = order;
  const log = sawLog(smallEnd, smallEnd + taper, length);
  const boards = sizes.map(({ thickness, width }) => board(thickness, width));
  try {
    return planned(log, boards, kerf, { pattern, mill: { bladeAboveBed, throat, waneAllowed } });
  } catch (problem) {
    if (problem instanceof OutOfRange) return undefined;
    throw problem;
  }
}

/** How far apart two rectangles lie; below 0 where they overlap. */
export const apart = (one: Outline, other: Outline) =>
  Math.max(one.left - other.right, other.left - one.right, one.lower - other.upper, other.lower - one.upper);

export const corners = ({ left, right, lower, upper }: Outline) =>
  [left, right].flatMap((u) => [lower, upper].map((v) => Math.hypot(u, v)));
