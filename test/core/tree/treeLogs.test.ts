import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { inches, percent } from "../../../src/core/basis/units";
import { logRule } from "../../../src/core/log/findLogRule";
import { treeLogs } from "../../../src/core/tree/treeLogs";
import { treeVolume } from "../../../src/core/tree/treeVolume";

const tree = (dbh: number, logs: number, formClass = 78) => ({ dbh: inches(dbh), logs, formClass: percent(formClass) });

describe("the logs of a standing tree", () => {
  it("are 12.5, 11.0 and 9.3 in at 16 in, 3 logs, form class 78, worked by hand", () => {
    expect(treeLogs(tree(16, 3))).toEqual([
      { log: 1, smallEnd: 12.5, largeEnd: 16, length: 16 },
      { log: 2, smallEnd: 11, largeEnd: 12.5, length: 16 },
      { log: 3, smallEnd: 9.3, largeEnd: 11, length: 16 },
    ]);
  });

  it("end in half a log of 8 feet with half its taper", () => {
    // Second log: mean of the 2- and the 3-log taper, 1.9 and 1.5; third: half of 1.7.
    const [butt, second, top] = treeLogs(tree(16, 2.5));
    expect(butt?.smallEnd).toBe(12.5);
    expect(second?.smallEnd).toBeCloseTo(12.5 - 1.7, 9);
    expect(top?.smallEnd).toBeCloseTo(12.5 - 1.7 - 0.85, 9);
    expect(top?.length).toBe(8);
  });

  it("taper on a straight line between the diameters of the table", () => {
    // 17 in, 2 logs: first top 13.26 to a tenth, then the mean of 1.9 and 2.0.
    const [butt, second] = treeLogs(tree(17, 2));
    expect(butt?.smallEnd).toBe(13.3);
    expect(second?.smallEnd).toBeCloseTo(13.3 - 1.95, 9);
  });

  it("scale to the tree's own volume at whole logs and even diameters", () => {
    for (const rule of ["Doyle", "Scribner", "International 1/4"].map(logRule)) {
      const scaled = treeLogs(tree(24, 4)).map(({ smallEnd, length }) => rule.scale({ diameter: smallEnd, length }));
      expect(scaled.reduce((sum, one) => sum + one, 0)).toBeCloseTo(treeVolume(tree(24, 4), rule), 9);
    }
  });

  it("never grow thicker upwards, join end to end and add up to the height", () => {
    const reach = fc.tuple(
      fc.double({ min: 12, max: 32, noNaN: true }),
      fc.double({ min: 1, max: 4, noNaN: true }),
      fc.double({ min: 65, max: 90, noNaN: true }),
    );
    fc.assert(
      fc.property(reach, ([dbh, count, formClass]) => {
        const logs = treeLogs(tree(dbh, count, formClass));
        logs.forEach(({ smallEnd, largeEnd }, index) => {
          expect(smallEnd).toBeLessThanOrEqual(largeEnd);
          expect(smallEnd).toBeGreaterThan(0);
          if (index > 0) expect(largeEnd).toBe(logs[index - 1]?.smallEnd);
        });
        expect(logs.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(16 * count, 9);
      }),
    );
  });

  it.each([
    [9, 1],
    [14, 0.5],
    [34, 4],
    [20, 5],
  ])("are refused at %s in with %s logs, as the volume is", (dbh, logs) => {
    expect(() => treeLogs(tree(dbh, logs))).toThrow(OutOfRange);
  });
});
