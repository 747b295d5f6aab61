import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import { fullTaper, splitTaper } from "../../../src/core/sawing/lyingLog";
import type { Outline } from "../../../src/core/sawing/outline";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { best } from "../../../src/core/sawing/patterns/best";
import { live } from "../../../src/core/sawing/patterns/live";
import type { SawLog } from "../../../src/core/sawing/sawLog";
import type { SawingPattern, SawPlan } from "../../../src/core/sawing/sawingPattern";
import type { BestPlan } from "../../../src/core/sawing/sawPlan";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { sticksOut, widestBoard, type Shape } from "../../support/logWood";
import { board, boardsOf, planned, sawLog } from "../../support/sawing";

const anOrder = fc.record({
  smallEnd: fc.double({ min: 7, max: 18, noNaN: true }),
  oval: fc.double({ min: 0, max: 4, noNaN: true }),
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
type Order = typeof anOrder extends fc.Arbitrary<infer T> ? T : never;

const logOf = ({ smallEnd, oval, taper, length, sweep }: Order): SawLog => ({
  ...sawLog(smallEnd, smallEnd + taper, length),
  ...(oval > 0 && { smallEndAcross: inches(smallEnd + oval), largeEndAcross: inches(smallEnd + taper + oval) }),
  ...(sweep > 0 && { sweep: inches(sweep) }),
});

function plan(pattern: SawingPattern, order: Order): BestPlan | undefined {
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
function shapeOf({ log, lying: { upright, taper } }: SawPlan): Shape {
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
  };
}

const apart = (one: Outline, other: Outline) =>
  Math.max(one.left - other.right, other.left - one.right, one.lower - other.upper, other.lower - one.upper);

describe.each(sawingPatterns)(
  "a plan by $title of a log that is oval, swept, sawn parallel to the bark or on a scale",
  (pattern) => {
    it("lays every board in the wood all along it, a kerf from every other, and the blade through none", () => {
      fc.assert(
        fc.property(anOrder, (order) => {
          const found = plan(pattern, order);
          if (!found) return;
          const shape = shapeOf(found);
          const boards = boardsOf(found);
          boards.forEach((one, i) => {
            // Sweep between two sections that are looked at: S / 256, here as a share of half the thinnest end.
            const unseen = (2 * order.sweep) / 256 / order.smallEnd;
            expect(sticksOut(shape, one.outline, one.piece.length)).toBeLessThanOrEqual(unseen + 1e-6);
            for (const other of boards.slice(i + 1)) {
              expect(apart(one.outline, other.outline)).toBeGreaterThanOrEqual(order.kerf - 1e-6);
            }
            for (const { kerfIn } of found.cuts) expect(apart(kerfIn, one.outline)).toBeGreaterThanOrEqual(-1e-6);
          });
          expect(found.worth).toBeLessThanOrEqual(found.most.boardFeet);
          const { lumber, sawdust, slab } = sawYield(found);
          expect(lumber + sawdust + slab).toBeCloseTo(100, 6);
          expect(Math.min(lumber, sawdust, slab)).toBeGreaterThan(0);
        }),
        { numRuns: 60 },
      );
    }, 60_000);

    it("is set above the lowest blade, on marks of the scale, and gives no board thinner than wanted", () => {
      fc.assert(
        fc.property(anOrder, (order) => {
          const found = plan(pattern, order);
          if (!found) return;
          for (const { headReading } of found.cuts) {
            expect(headReading).toBeGreaterThanOrEqual(order.bladeAboveBed - 1e-6);
            if (order.scaleStep === undefined) continue;
            const marks = headReading / order.scaleStep;
            expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-6);
          }
          for (const { flitch, boards } of found.flitches) {
            expect(flitch.thickness).toBeGreaterThanOrEqual(flitch.listed - 1e-9);
            expect(flitch.thickness).toBeLessThan(flitch.listed + 2 * (order.scaleStep ?? 1e-6));
            for (const { piece } of boards) expect(piece.thickness).toBe(flitch.listed);
          }
          expect(plan(pattern, order)).toEqual(found);
          expect(plan(best, order)?.worth ?? 0).toBeGreaterThanOrEqual(found.worth - 1e-6);
        }),
        { numRuns: 40 },
      );
    }, 60_000);
  },
);

it("quarter sawing says why it cannot follow the bark", () => {
  const [quarter] = sawingPatterns.filter(({ id }) => id === "quarter");
  const plan = () =>
    planned(sawLog(16, 18, 12), [board(1, 4)], 0.125, { pattern: quarter as SawingPattern, taper: fullTaper });
  expect(plan).toThrow("Quarter sawing splits the log along its pith, so it is planned on split taper only.");
});

describe("live sawing of a log that is oval, swept or sawn parallel to the bark", () => {
  it("is never poorer than an enumeration of openings every 1/8 in, and richer only between them", () => {
    fc.assert(
      fc.property(
        anOrder.filter(({ sweep, oval, full }) => sweep > 0 || oval > 0 || full),
        (order) => {
          const one: Order = { ...order, scaleStep: undefined, bladeAboveBed: 0 };
          const log = logOf(one);
          const sizes = [3, 4, 5, 6, 7, 8].map((width) => board(1, width));
          const options = {
            pattern: live,
            shortBoards: false,
            sideBySide: false,
            taper: one.full ? fullTaper : splitTaper,
          };
          const found = planned(log, sizes, one.kerf, options);
          const shape = shapeOf(found);
          const pitch = 1 + one.kerf;
          let most = 0;
          for (let offset = 0; offset < pitch; offset += 1 / 8) {
            let widths = 0;
            for (let at = -20 + offset; at < 20; at += pitch) {
              const width = Math.min(8, Math.floor(widestBoard(shape, at, 1) + 1e-9));
              if (width >= 3) widths += width;
            }
            most = Math.max(most, widths);
          }
          const ours = boardsOf(found).reduce((sum, { piece }) => sum + piece.width, 0);
          expect(ours).toBeGreaterThanOrEqual(most);
          expect(ours).toBeLessThanOrEqual(most + 8);
        },
      ),
      { numRuns: 6 },
    );
  }, 120_000);

  it("loses the sweep from every width where it lies level, and none of the length", () => {
    const straight = planned(sawLog(12, 12, 8), [board(1, 4), board(1, 6), board(1, 8), board(1, 10)], 0.125, {
      shortBoards: false,
    });
    const bent = planned(
      { ...sawLog(12, 12, 8), sweep: inches(2) },
      [board(1, 2), board(1, 4), board(1, 6), board(1, 8)],
      0.125,
      { shortBoards: false },
    );
    // Laid level, each chord is 2 in shorter: the same stack with every board 2 in narrower.
    const narrower = boardsOf(straight).reduce((sum, { piece }) => sum + piece.width - 2, 0);
    const ours = boardsOf(bent).reduce((sum, { piece }) => sum + piece.width, 0);
    expect(ours).toBeGreaterThanOrEqual(narrower);
  });
});
