import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches } from "../../../src/core/basis/units";
import { headSettings } from "../../../src/core/sawing/headSettings";

const hundredths = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => n / 100);

/** A mill's measures, with room for all boards above the bed. */
const run = fc
  .record({
    thickness: hundredths(25, 400),
    kerf: hundredths(4, 30),
    pieces: fc.integer({ min: 1, max: 12 }),
    parts: fc.constantFrom(4, 8, 10, 16, 32),
    spare: hundredths(0, 300),
  })
  .map(({ parts, spare, ...one }) => ({
    ...one,
    scaleStep: 1 / parts,
    start: one.pieces * (one.thickness + one.kerf + 1 / parts) + spare,
  }));

describe("a run of like boards by the marks of a scale", () => {
  it("is set on marks only, and no board is thinner than asked, nor thicker by a step", () => {
    fc.assert(
      fc.property(run, ({ start, thickness, kerf, pieces, scaleStep }) => {
        const settings = headSettings({
          start: inches(start),
          thickness: inches(thickness),
          kerf: inches(kerf),
          pieces,
          scaleStep,
        });
        expect(settings).toHaveLength(pieces);
        settings.forEach(({ reading, thickness: board }, i) => {
          expect(Math.abs(reading / scaleStep - Math.round(reading / scaleStep))).toBeLessThan(1e-9);
          const above = i === 0 ? start : (settings[i - 1]?.reading ?? NaN);
          expect(above - reading).toBeCloseTo(board + kerf, 9);
          expect(board).toBeGreaterThan(thickness - 1e-9);
          expect(board).toBeLessThan(thickness + scaleStep);
        });
      }),
    );
  });
});
