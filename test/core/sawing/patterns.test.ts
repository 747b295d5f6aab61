import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import type { BoardSize } from "../../../src/core/sawing/boardSize";
import { around } from "../../../src/core/sawing/patterns/around";
import { cant } from "../../../src/core/sawing/patterns/cant";
import { quarter } from "../../../src/core/sawing/patterns/quarter";
import { fullTaper, splitTaper, type Taper } from "../../../src/core/sawing/lyingLog";
import type { Mill } from "../../../src/core/sawing/millLimits";
import { sawingPatterns } from "../../../src/core/sawing/patterns";
import { patternNames } from "../../../src/core/sawing/patternNames";
import type { SawLog } from "../../../src/core/sawing/sawLog";
import type { SawingPattern } from "../../../src/core/sawing/sawingPattern";
import { byEveryCant, byEveryHeart, type Cylinder } from "../../support/patternsByEnumeration";
import { byEveryPeel } from "../../support/quarterByEnumeration";
import { board, planned, sawLog } from "../../support/sawing";

const LENGTH = 12;

const fewSizes = (priced: boolean, widest: number): fc.Arbitrary<BoardSize[]> =>
  fc
    .uniqueArray(
      fc.record({
        thickness: fc.constantFrom(1, 1.5, 2),
        width: fc.integer({ min: 4, max: 2 * widest }).map((halves) => halves / 2),
        price: fc.integer({ min: 3, max: 12 }).map((hundreds) => hundreds * 100),
      }),
      { minLength: 1, maxLength: 4, selector: ({ thickness, width }) => thickness * 100 + width },
    )
    .map((sizes) => sizes.map(({ thickness, width, price }) => board(thickness, width, priced ? price : undefined)));

const aCylinder = (smallest: number, thickest: number) =>
  fc.boolean().chain((priced) =>
    fc.record({
      diameter: fc.double({ min: smallest, max: thickest, noNaN: true }),
      length: fc.constant(LENGTH),
      sizes: fewSizes(priced, thickest - 1),
      kerf: fc.constantFrom(0.09, 0.125, 0.25),
    }),
  );

function worthBy(
  pattern: SawingPattern,
  { diameter, length, sizes, kerf }: Cylinder,
  shape: Partial<SawLog> = {},
  mill: Mill = {},
  taper: Taper = splitTaper,
): number {
  const log = { ...sawLog(diameter, diameter, length), ...shape };
  try {
    return planned(log, sizes, kerf, { pattern, shortBoards: false, mill, taper }).worth;
  } catch (problem) {
    if (problem instanceof OutOfRange) return 0;
    throw problem;
  }
}

it("every pattern is named as it names itself, in the order of the menu", () => {
  expect(sawingPatterns.map(({ title, aliases }) => ({ title, aliases }))).toEqual(patternNames);
});

describe("a plan is worth as much as the best of an independent enumeration", () => {
  it("of every cant, whatever its thickness, at every height that tells", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const shares = fc.array(fc.tuple(share, share), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(aCylinder(3.5, 6.5), shares, (log, further) => {
        expect(worthBy(cant, log)).toBeCloseTo(byEveryCant(log, further), 5);
      }),
      { numRuns: 400 },
    );
  }, 120_000);

  it("of every heart and every order on the four faces around it", () => {
    fc.assert(
      fc.property(aCylinder(4, 12), (log) => {
        expect(worthBy(around, log)).toBeCloseTo(byEveryHeart(log), 5);
      }),
      { numRuns: 1000 },
    );
  }, 120_000);

  it("of every order in which a quarter can be peeled", () => {
    fc.assert(
      fc.property(aCylinder(6, 14), (log) => {
        expect(worthBy(quarter, log)).toBeCloseTo(byEveryPeel(log, { step: 1 / 32 }), 5);
      }),
      { numRuns: 600 },
    );
  }, 120_000);

  it("of every order in which a quarter of an oval log can be peeled, whichever way it is laid", () => {
    fc.assert(
      fc.property(aCylinder(6, 12), fc.double({ min: 0, max: 3, noNaN: true }), fc.boolean(), (log, oval, isLevel) => {
        const [level, up] = isLevel ? [log.diameter + oval, log.diameter] : [log.diameter, log.diameter + oval];
        const ends = { smallEndAcross: inches(up), largeEndAcross: inches(up) };
        const worth = worthBy(quarter, { ...log, diameter: level }, ends);
        expect(worth).toBeCloseTo(byEveryPeel({ ...log, diameter: level }, { step: 1 / 32, diameterUp: up }), 5);
      }),
      { numRuns: 600 },
    );
  }, 120_000);

  it("of every order in which a quarter can be peeled on the marks of a scale, round or oval", () => {
    const steps = fc.constantFrom(1 / 16, 1 / 8, 3 / 16, 1 / 4, 1 / 2);
    fc.assert(
      fc.property(aCylinder(6, 14), fc.double({ min: 0, max: 2, noNaN: true }), steps, (log, oval, step) => {
        const up = log.diameter + oval;
        const ends = { smallEndAcross: inches(up), largeEndAcross: inches(up) };
        const worth = worthBy(quarter, log, ends, { scaleStep: step });
        expect(worth).toBeCloseTo(byEveryPeel(log, { step, isOnScale: true, diameterUp: up }), 5);
      }),
      { numRuns: 600 },
    );
  }, 120_000);

  it("of every order in which the quarters of a swept log can be peeled, whichever way it is laid", () => {
    const steps = fc.constantFrom(1 / 8, 1 / 4, 1 / 2);
    const sweeps = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        aCylinder(6, 12),
        fc.double({ min: 0, max: 2, noNaN: true }),
        sweeps,
        steps,
        (log, oval, sweep, step) => {
          const second = log.diameter + oval;
          const shape = { smallEndAcross: inches(second), largeEndAcross: inches(second), sweep: inches(sweep) };
          const worth = worthBy(quarter, log, shape, { scaleStep: step });
          const marks = { step, isOnScale: true };
          const level = byEveryPeel(log, { ...marks, diameterUp: second, sweepLevel: sweep });
          const upright = byEveryPeel(
            { ...log, diameter: second },
            { ...marks, diameterUp: log.diameter, sweepUp: sweep },
          );
          expect(worth).toBeCloseTo(Math.max(level, upright), 5);
        },
      ),
      { numRuns: 300 },
    );
  }, 120_000);

  it("of every order in which the quarters of a tapered log can be peeled along their bark", () => {
    const steps = fc.constantFrom(1 / 8, 1 / 4, 1 / 2);
    const thinner = fc.double({ min: 0.1, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(aCylinder(6, 14), thinner, steps, (log, less, step) => {
        const smallEnd = inches(log.diameter - 2 * less);
        const worth = worthBy(quarter, log, { smallEnd, smallEndAcross: smallEnd }, { scaleStep: step }, fullTaper);
        expect(worth).toBeCloseTo(byEveryPeel(log, { step, isOnScale: true, thinner: less }), 5);
      }),
      { numRuns: 300 },
    );
  }, 120_000);
});
