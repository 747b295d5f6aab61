import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { feet, inchesPerFoot } from "../../../src/core/basis/units";
import { scribnerDecimalC } from "../../../src/core/log/rules/scribnerDecimalC";
import { segments } from "../../../src/core/log/segments";
import { log } from "./printedLog";

const lengthsOf = (length: number, longest: number) =>
  segments(log(12, length), feet(longest)).map((piece) => piece.length);

describe("segments of a long log, from the small end", () => {
  it.each([
    [16, 16, [16]],
    [17, 16, [8, 9]], // 8 + 10, less the foot that 17 lacks of even feet
    [32, 20, [16, 16]],
    [34, 20, [16, 18]], // the longer one at the butt
    [33, 20, [16, 17]],
    [39, 20, [19, 20]],
    [50, 16, [12, 12, 12, 14]],
    [34, 17, [10, 12, 12]], // no even piece is longer than 16 ft
  ])("%i ft by at most %i ft is %j", (length, longest, expected) => {
    expect(lengthsOf(length, longest)).toEqual(expected);
  });

  it("gives 130 bf of Decimal C for 32 ft, 10 in at the top and 12 at the butt, at most 20 ft at a time", () => {
    const pieces = segments(log(10, 32), feet(20), inchesPerFoot(2 / 32));
    expect(pieces).toEqual([log(10, 16), log(11, 16)]);
    expect(pieces.reduce((sum, piece) => sum + scribnerDecimalC.scale(piece), 0)).toBe(130); // 6 + 7 tens
  });

  it("leaves the diameter alone where no taper is told", () => {
    expect(segments(log(10, 32), feet(16))).toEqual([log(10, 16), log(10, 16)]);
  });

  it("adds up to the log, fits the longest scaling length, grows towards the butt, in even feet but for one", () => {
    const lengths = fc.double({ min: 0.5, max: 300, noNaN: true });
    fc.assert(
      fc.property(lengths, fc.double({ min: 2, max: 60, noNaN: true }), (length, longest) => {
        const pieces = segments(log(10, length), feet(longest), inchesPerFoot(0.1));
        const fewest = length <= longest ? 1 : Math.ceil(length / (2 * Math.floor(longest / 2)));
        let above = 0;
        for (const [k, piece] of pieces.entries()) {
          expect(piece.length).toBeGreaterThan(0);
          expect(piece.length).toBeLessThanOrEqual(longest);
          expect(piece.length).toBeGreaterThanOrEqual((pieces[k - 1]?.length ?? 0) - 1e-9);
          expect(piece.diameter).toBeCloseTo(10 + 0.1 * above, 9);
          above += piece.length;
        }
        expect(above).toBeCloseTo(length, 9);
        expect(pieces).toHaveLength(fewest);
        expect(pieces.filter((piece) => piece.length % 2 !== 0).length).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("refuses a longest scaling length that no even piece fits", () => {
    expect(() => lengthsOf(16, 1)).toThrow(InvalidInput);
    expect(() => lengthsOf(16, 0)).toThrow("Longest scaling length should be above 0 ft. You have 0.");
  });
});
