import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { farFromOthers } from "../../../src/core/cruise/farFromOthers";

const far = (...values: number[]) => values.filter((_, place) => farFromOthers(values, 5)[place]);

describe("a value far from the others", () => {
  it("is found beside like ones, above and below, with what the others are", () => {
    expect(far(12, 14, 13, 15, 14, 40)).toEqual([40]);
    expect(far(12, 14, 13, 15, 14, 5)).toEqual([5]);
    expect(farFromOthers([12, 14, 13, 15, 14, 40], 5)[5]).toEqual({ least: 12, largest: 15 });
  });

  it("is judged in proportion and by how mixed the others are", () => {
    // By hand: ln of 6, 9, 12, 18, 24, 36; median (ln 12 + ln 18) / 2 = 2.6877; deviations 0.2027 twice, 0.4904
    // (ln 24 up, ln 9 down), 0.8959; their median (0.2027 + 0.4904) / 2 = 0.3466, so that even 6 and 36 have a
    // score of 0.6745 x 0.8959 / 0.3466 = 1.74.
    expect(far(6, 9, 12, 18, 24, 36)).toEqual([]);
    expect(far(6, 9, 12, 18, 24, 36, 143)).toEqual([]);
    expect(far(10, 11, 12, 12, 13, 14, 143)).toEqual([143]);
  });

  it("is not made of a slight difference among values that are all the same", () => {
    // 3.5 x ln 1.15 / 0.6745 = 0.72523, so the limit lies at 14 x 2.0652 = 28.91.
    expect(far(14, 14, 14, 14, 14, 28.9)).toEqual([]);
    expect(far(14, 14, 14, 14, 14, 29)).toEqual([29]);
  });

  it("is not looked for among few", () => {
    expect(farFromOthers([12, 13, 14, 60], 5)).toEqual([undefined, undefined, undefined, undefined]);
  });

  it("is the same in any unit, and fewer than half can be far", () => {
    const values = fc.array(fc.double({ min: 0.5, max: 200, noNaN: true }), { minLength: 5, maxLength: 40 });
    fc.assert(
      fc.property(values, (all) => {
        const found = farFromOthers(all, 5).map((others) => others !== undefined);
        const inCm = farFromOthers(
          all.map((value) => value * 2.54),
          5,
        ).map((others) => others !== undefined);
        expect(found.filter((one) => one).length).toBeLessThanOrEqual(all.length / 2);
        if (found.filter((one, place) => one !== inCm[place]).length > 1) expect(inCm).toEqual(found);
      }),
    );
  });
});
