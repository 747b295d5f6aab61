import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches } from "../../../src/core/basis/units";
import { live } from "../../../src/core/sawing/patterns/live";
import { sawPlan } from "../../../src/core/sawing/sawPlan";
import { board, inchBoards, livePlan, sawLog } from "../../support/sawing";

const KERF = 0.125;

describe("cut list", () => {
  it("counts settings up from the board left on the bed: three inch boards of 10 in from a 10.8-in log", () => {
    // A 10-in face may lie sqrt(5.4^2 - 5^2) = 2.040 in from the pith: 4.079 in hold 3 boards and 2 kerfs, 3.25 in,
    // set in the middle: lower faces at -1.625, -0.5 and 0.625 in from the pith, which lies 5.4 in above the bed.
    const { cuts, lastOnBed } = livePlan(sawLog(10.8, 10.8, 8), [board(1, 10)], KERF);
    const rows = cuts.map(({ turn, headReading, frees }) => [
      turn,
      headReading.toFixed(3),
      typeof frees === "string" ? frees : "board",
    ]);
    expect(rows).toEqual([
      ["none", "7.025", "slab"], // 0.625 + 1 + 5.4
      ["none", "5.900", "board"], // 7.025 - 1.125
      ["half turn", "2.125", "slab"], // 1 + 1.125
      ["none", "1.000", "board"],
    ]);
    expect(lastOnBed?.outline.lower).toBeCloseTo(-0.5, 9);
    expect(cuts[0]?.smallEndRaised).toBe(0);
  });

  it("raises the small end by half the taper, so that the pith lies level", () => {
    // The three boards of the log above, full length only: the pith now lies 12.8 / 2 in above the bed.
    const { cuts } = livePlan(sawLog(10.8, 12.8, 8), [board(1, 10)], KERF, false);
    expect(cuts[0]?.smallEndRaised).toBeCloseTo(1, 9);
    expect(cuts.find(({ turn }) => turn === "half turn")?.smallEndRaised).toBe(0);
    expect(cuts[0]?.headReading).toBeCloseTo(0.625 + 1 + 6.4, 9);
  });

  it("lowers the blade by a board and a kerf each time, and ends at the thickness of the last board", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 9, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        fc.subarray([board(1, 4), board(1.25, 5), board(2, 4), board(2, 8)], { minLength: 1 }),
        (smallEnd, taper, sizes) => {
          const { cuts, lastOnBed, flitches } = livePlan(sawLog(smallEnd, smallEnd + taper, 12), sizes, KERF);
          cuts.forEach(({ headReading, frees, turn }, i) => {
            const before = cuts[i - 1];
            expect(headReading).toBeGreaterThan(0);
            if (typeof frees !== "string" && before && turn === "none") {
              expect(before.headReading - headReading).toBeCloseTo(frees.flitch.thickness + KERF, 9);
            }
          });
          expect(cuts.at(-1)?.headReading).toBeCloseTo(lastOnBed?.flitch.thickness ?? NaN, 9);
          expect(cuts).toHaveLength(flitches.length + 1);
          expect(new Set(flitches.map(({ outline }) => outline.lower)).size).toBe(flitches.length);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("leaves a board on the bed that the blade can be set above, or says that there is none", () => {
    const log = sawLog(12, 12, 8);
    const thin = [board(0.75, 4), board(0.75, 8)];
    const order = { log, sizes: thin, kerf: inches(KERF), pattern: live, mill: { bladeAboveBed: 1 } };
    expect(() => sawPlan(order)).toThrow(
      "The last board stays on the bed, and your blade stops 1 in above it. No board in your list that fits this log is so thick.",
    );
    const { lastOnBed, cuts } = sawPlan({ ...order, sizes: [...thin, board(2, 4)] });
    expect(lastOnBed?.flitch.thickness).toBe(2);
    expect(Math.min(...cuts.map(({ headReading }) => headReading))).toBeGreaterThanOrEqual(1);
  });

  it("turns a log with one board in it, so that no cut passes under it", () => {
    const { cuts } = livePlan(sawLog(6, 6, 8), [board(2, 5)], KERF);
    expect(cuts.map(({ turn, frees }) => [turn, frees])).toEqual([
      ["none", "slab"],
      ["half turn", "slab"],
    ]);
  });

  it("follows the same settings whatever the list is sorted by", () => {
    const log = sawLog(14, 16, 12);
    const forwards = livePlan(log, inchBoards(3, 14), KERF);
    const backwards = livePlan(log, inchBoards(3, 14).reverse(), KERF);
    expect(backwards.cuts).toEqual(forwards.cuts);
  });
});
