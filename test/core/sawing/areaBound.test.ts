import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches } from "../../../src/core/basis/units";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { live } from "../../../src/core/sawing/patterns/live";
import { board, planned, sawLog } from "../../support/sawing";
import { anOrder, planBy } from "../../support/sawOrders";

describe("what no plan can exceed by area and kerf", () => {
  it("is the section and half a kerf around it, full of the board that is worth most for its area (by hand)", () => {
    const log = sawLog(12, 12, 12);
    const { most } = planned(log, [board(1, 6), board(2, 4)], 0.125, { pattern: live, shortBoards: false });
    // A 2 x 4 x 12 is 8 bf on 4 (2 + 0.125) = 8.5 in2, the 1 x 6 x 12 is 6 on 6.75: pi 6.0625^2 x 8 / 8.5
    expect(most.boardFeet).toBeCloseTo(((Math.PI * 6.0625 ** 2) / 8.5) * 8, 9);
    expect(most.value).toBeUndefined();
  });

  it("goes by dollars where boards are priced, and counts for every length what is left of taper (by hand)", () => {
    // 12 in at the small end, 16 at the large one, 8 ft: boards of 8 ft within 12 in, those of 4 ft within 14 as well
    const { most } = planned(sawLog(12, 16, 8), [board(1, 6, 1000)], 0.25, { pattern: live, mill: { lengthStep: 4 } });
    const [core, ring] = [Math.PI * 6.125 ** 2, Math.PI * (7.125 ** 2 - 6.125 ** 2)];
    expect(most.value).toBeCloseTo((core * 4 + ring * 2) / (6 * 1.25), 9); // $4 and $2 a board
    expect(most.boardFeet).toBeCloseTo((core * 4 + ring * 2) / (6 * 1.25), 9);
  });

  it("takes an oval end by its area and the most that its girth can be, and a board with wane by what is wood of it", () => {
    const log = { ...sawLog(10, 10, 8), smallEndAcross: inches(14), largeEndAcross: inches(14) };
    const { most } = planned(log, [board(1, 6)], 0.25, {
      pattern: live,
      shortBoards: false,
      mill: { waneAllowed: 40 },
    });
    const girth = Math.PI * Math.sqrt(2 * (5 ** 2 + 7 ** 2));
    const grown = Math.PI * 5 * 7 + girth * 0.125 + Math.PI * 0.125 ** 2;
    expect(most.boardFeet).toBeCloseTo((grown * 4) / (6 * 0.85), 9); // 1 in less 40 % wane, and a kerf of 0.25
  });

  it.each(sawingPatterns)(
    "is never exceeded by a plan of hundreds of random logs, wane or none: $title",
    (pattern) => {
      let nearest = 0;
      fc.assert(
        fc.property(anOrder, (order) => {
          const found = planBy(pattern, order);
          if (!found) return;
          const share = found.worth / found.most.boardFeet;
          nearest = Math.max(nearest, share);
          expect(share).toBeLessThanOrEqual(1);
        }),
        { numRuns: 300 },
      );
      expect(nearest).toBeGreaterThan(0.8); // so it is not far off either
    },
    60_000,
  );
});
