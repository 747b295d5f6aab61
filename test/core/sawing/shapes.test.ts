import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches } from "../../../src/core/basis/units";
import { fullTaper, splitTaper } from "../../../src/core/sawing/lyingLog";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { best } from "../../../src/core/sawing/patterns/best";
import { live } from "../../../src/core/sawing/patterns/live";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { sticksOut, widestBoard } from "../../support/logWood";
import { board, boardsOf, planned, sawLog } from "../../support/sawing";
import { apart } from "../../support/sawOrders";
import { aShapedOrder, logOf, planOfShaped, shapeOf, type ShapedOrder } from "../../support/shapedOrders";

describe.each(sawingPatterns)(
  "a plan by $title of a log that is oval, swept, sawn parallel to the bark or on a scale",
  (pattern) => {
    it("lays every board in the wood all along it, a kerf from every other, and the blade through none", () => {
      fc.assert(
        fc.property(aShapedOrder, (order) => {
          const found = planOfShaped(pattern, order);
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
        fc.property(aShapedOrder, (order) => {
          const found = planOfShaped(pattern, order);
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
          expect(planOfShaped(pattern, order)).toEqual(found);
          expect(planOfShaped(best, order)?.worth ?? 0).toBeGreaterThanOrEqual(found.worth - 1e-6);
        }),
        { numRuns: 40 },
      );
    }, 60_000);
  },
);

describe("live sawing of a log that is oval, swept or sawn parallel to the bark", () => {
  it("is never poorer than an enumeration of openings every 1/8 in, and richer only between them", () => {
    fc.assert(
      fc.property(
        aShapedOrder.filter(({ sweep, oval, full }) => sweep > 0 || oval > 0 || full),
        (order) => {
          const one: ShapedOrder = { ...order, scaleStep: undefined, bladeAboveBed: 0 };
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
