import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import { fullTaper, splitTaper } from "../../../src/core/sawing/lyingLog";
import { cant } from "../../../src/core/sawing/patterns/cant";
import type { SawLog } from "../../../src/core/sawing/sawLog";
import { byEveryPairOfMarks, type SectionOnMarks } from "../../support/cantOnMarks";
import { board, planned, sawLog } from "../../support/sawing";

const STEP = 1 / 4;
const LENGTH = 12;
const quarters = (least: number, most: number) => fc.integer({ min: 4 * least, max: 4 * most }).map((n) => n / 4);

const aLog = fc.record({
  smallEnd: quarters(3.5, 7),
  kerf: fc.constantFrom(1 / 8, 1 / 4),
  sizes: fc.uniqueArray(fc.record({ thickness: fc.constantFrom(0.75, 1, 1.5, 2), width: quarters(1.5, 5) }), {
    minLength: 1,
    maxLength: 4,
    selector: ({ thickness, width }) => `${thickness} ${width}`,
  }),
  priced: fc.boolean(),
});

/** Sections as far apart as the planner looks at them; the log lies with its first diameter level or upright. */
function sectionsOf(log: SawLog, isFull: boolean, isUpright: boolean): readonly SectionOnMarks[] {
  return Array.from({ length: 17 }, (_, i) => {
    const share = i / 16;
    const first = (log.largeEnd - (log.largeEnd - log.smallEnd) * share) / 2;
    const [large, small] = [log.largeEndAcross ?? log.largeEnd, log.smallEndAcross ?? log.smallEnd];
    const second = (large - (large - small) * share) / 2;
    const bow = 4 * (log.sweep ?? 0) * share * (1 - share);
    const [a, b] = isUpright ? [second, first] : [first, second];
    const [a0, b0] = isUpright ? [large / 2, log.largeEnd / 2] : [log.largeEnd / 2, large / 2];
    return {
      u: (isFull ? a - a0 : 0) + (isUpright ? 0 : bow),
      v: (isFull ? b - b0 : 0) + (isUpright ? bow : 0),
      a,
      b,
    };
  });
}

describe("a cant on the marks of a scale", () => {
  it.each([
    ["plain", 150],
    ["oval", 100],
    ["swept", 100],
    ["full taper", 100],
  ] as const)(
    "of a log that is %s: every pair of marks for its faces gives no more",
    (shape, runs) => {
      fc.assert(
        fc.property(aLog, quarters(0.5, 1.5), ({ smallEnd, kerf, sizes, priced }, more) => {
          const taper = shape === "full taper" ? more : 0;
          const log: SawLog = {
            ...sawLog(smallEnd, smallEnd + taper, LENGTH),
            ...(shape === "oval" && {
              smallEndAcross: inches(smallEnd + more),
              largeEndAcross: inches(smallEnd + more),
            }),
            ...(shape === "swept" && { sweep: inches(more) }),
          };
          const boards = sizes.map(({ thickness, width }, i) =>
            board(thickness, width, priced ? 400 + 100 * i : undefined),
          );
          const isFull = shape === "full taper";
          const options = {
            pattern: cant,
            shortBoards: false,
            mill: { scaleStep: STEP },
            taper: isFull ? fullTaper : splitTaper,
          };
          const lays = [false, true].map((isUpright) => sectionsOf(log, isFull, isUpright));
          const most = lays.map((sections) =>
            byEveryPairOfMarks({ sections, length: LENGTH, sizes: boards, kerf, step: STEP }),
          );
          let worth = 0;
          try {
            worth = planned(log, boards, kerf, options).worth;
          } catch (problem) {
            if (!(problem instanceof OutOfRange)) throw problem;
          }
          expect(worth).toBeCloseTo(Math.max(...most), 5);
        }),
        { numRuns: runs },
      );
    },
    120_000,
  );
});
