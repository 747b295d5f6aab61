import fc from "fast-check";
import { OutOfRange } from "../../src/core/basis/problem";
import { inches } from "../../src/core/basis/units";
import { fullTaper, splitTaper } from "../../src/core/sawing/lyingLog";
import type { SawLog } from "../../src/core/sawing/sawLog";
import type { SawingPattern, SawPlan } from "../../src/core/sawing/sawingPattern";
import type { BestPlan } from "../../src/core/sawing/sawPlan";
import type { Shape } from "./logWood";
import { board, planned, sawLog } from "./sawing";

/** A random log that may be oval, swept, sawn parallel to the bark or on the marks of a scale, with boards, kerf and mill. */
export const aShapedOrder = fc.record({
  smallEnd: fc.double({ min: 7, max: 18, noNaN: true }),
  oval: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 4, noNaN: true })),
  taper: fc.double({ min: 0, max: 4, noNaN: true }),
  length: fc.double({ min: 6, max: 16, noNaN: true }),
  sweep: fc.constantFrom(0, 0.5, 1, 2),
  full: fc.boolean(),
  kerf: fc.constantFrom(0.09, 0.125, 0.25),
  scaleStep: fc.constantFrom(undefined, 1 / 16, 1 / 8),
  bladeAboveBed: fc.constantFrom(0, 1, 2),
  sizes: fc.uniqueArray(
    fc.record({ thickness: fc.constantFrom(1, 1.25, 2, 4), width: fc.integer({ min: 3, max: 8 }) }),
    { minLength: 2, maxLength: 5, selector: ({ thickness, width }) => `${thickness} ${width}` },
  ),
});
export type ShapedOrder = typeof aShapedOrder extends fc.Arbitrary<infer T> ? T : never;

export const logOf = ({ smallEnd, oval, taper, length, sweep }: ShapedOrder): SawLog => ({
  ...sawLog(smallEnd, smallEnd + taper, length),
  ...(oval > 0 && { smallEndAcross: inches(smallEnd + oval), largeEndAcross: inches(smallEnd + taper + oval) }),
  ...(sweep > 0 && { sweep: inches(sweep) }),
});

/** Its plan; undefined where no board of the list can be had. */
export function planOfShaped(pattern: SawingPattern, order: ShapedOrder): BestPlan | undefined {
  const { kerf, scaleStep, bladeAboveBed, full, sizes } = order;
  const mill = { bladeAboveBed, ...(scaleStep !== undefined && { scaleStep }) };
  try {
    const boards = sizes.map(({ thickness, width }) => board(thickness, width));
    return planned(logOf(order), boards, kerf, { pattern, mill, taper: full ? fullTaper : splitTaper });
  } catch (problem) {
    if (problem instanceof OutOfRange) return undefined;
    throw problem;
  }
}

/** The log as a plan lays it. */
export function shapeOf({ log, lying: { upright, taper, splitKerf } }: SawPlan): Shape {
  const first = [log.largeEnd, log.smallEnd] as const;
  const second = [log.largeEndAcross ?? log.largeEnd, log.smallEndAcross ?? log.smallEnd] as const;
  const sweep = log.sweep ?? 0;
  return {
    level: upright ? second : first,
    upright: upright ? first : second,
    length: log.length,
    sweepLevel: upright ? 0 : sweep,
    sweepUpright: upright ? sweep : 0,
    full: taper.id === "full",
    ...(splitKerf !== undefined && { splitKerf }),
  };
}
