import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet, inches } from "../../../src/core/basis/units";
import { byWood } from "../../../src/core/value/productMeasures";
import type { BuckOrder, Stem } from "../../../src/core/value/buckOrder";
import { buckPlan } from "../../../src/core/value/buckPlan";
import { anyOrder, bestOfAll, product, stemOf, worth } from "../../support/bucking";

const planned = (order: BuckOrder) => {
  try {
    return buckPlan(order);
  } catch {
    return [];
  }
};

describe("the best way to cut a stem", () => {
  it("brings what the best of all ways brings, on 500 short stems", () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        expect(worth(planned(order))).toBeCloseTo(bestOfAll(order), 9);
      }),
      { numRuns: 500 },
    );
  });

  it("keeps to the order: lengths, small ends, trim, flaws, and no log into another", () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        let free: number = order.stump;
        for (const { from, to, product: sold, smallEnd, volume, value } of planned(order)) {
          expect(from).toBeGreaterThanOrEqual(free - 1e-9);
          expect(to).toBeLessThanOrEqual(order.stem.height + 1e-9);
          expect(smallEnd).toBeCloseTo(order.stem.diameterAt(to), 9);
          expect(smallEnd).toBeGreaterThanOrEqual(sold.smallestEnd);
          const steps = (to - from - order.trim - sold.shortest) / sold.step;
          expect(steps).toBeCloseTo(Math.round(steps), 6);
          expect(to - from - order.trim).toBeLessThanOrEqual(sold.longest + 1e-6);
          expect(value).toBeCloseTo((volume / sold.measure.perPrice) * sold.price, 9);
          for (const flaw of order.flaws ?? []) {
            expect(from >= flaw.to - 1e-9 || to <= flaw.from + 1e-9).toBe(true);
          }
          free = to;
        }
      }),
      { numRuns: 300 },
    );
  });

  it("is worked out by hand for a cylinder: 10 in, 33 ft, 1 ft stump, lengths 8 and 16", () => {
    const cylinder: Stem = { height: feet(33), diameterAt: () => inches(10), woodBetween: (from, to) => to - from };
    const order = {
      stem: cylinder,
      stump: feet(1),
      trim: feet(0),
      products: [
        product({ name: "short", shortest: feet(8), longest: feet(8), price: 100 }),
        product({ name: "long", shortest: feet(16), longest: feet(16), price: 200 }),
      ],
    };
    // Doyle gives 36 bf for 16 ft; at $200 two long logs bring $14.40, four short ones at $100 half of it.
    const logs = buckPlan(order);
    expect(logs.map(({ from, to, product: { name } }) => [from, to, name])).toEqual([
      [1, 17, "long"],
      [17, 33, "long"],
    ]);
    expect(worth(logs)).toBeCloseTo(14.4, 10);
  });

  it("cuts to the tenth of a foot and finer: three logs of 3.5 ft out of 10.5, where whole feet would leave 1.5", () => {
    const order = {
      stem: { height: feet(11.5), diameterAt: () => inches(10), woodBetween: (from: number, to: number) => to - from },
      stump: feet(1),
      trim: feet(0),
      products: [product({ shortest: feet(3), longest: feet(3.6), step: feet(0.1), measure: byWood, price: 1 })],
    };
    expect(worth(buckPlan(order))).toBeCloseTo(10.5, 9);
    const withTrim = { ...order, trim: feet(0.33), products: [product({ ...order.products[0], longest: feet(3.2) })] };
    // (3.2 + 0.33) x 3 = 10.59 is too long by 0.09; 3.2 + 3.2 + 3.1 with their trims are 10.49.
    expect(worth(buckPlan(withTrim))).toBeCloseTo(9.5, 9);
  });

  it("leaves a log out rather than sell a thinner one, and says so when nothing fits", () => {
    const order = { stem: stemOf(12, 60, 1), stump: feet(1), trim: feet(0.33), products: [product()] };
    for (const { smallEnd } of buckPlan(order)) expect(smallEnd).toBeGreaterThanOrEqual(8);
    expect(() => buckPlan({ ...order, products: [product({ smallestEnd: inches(13) })] })).toThrow(
      "No product in your list fits this stem.",
    );
    expect(() => buckPlan({ ...order, products: [] })).toThrow("No product in your list fits this stem.");
  });

  it("says what is wrong with an order", () => {
    const order = { stem: stemOf(12, 60, 1), stump: feet(1), trim: feet(0.33), products: [product()] };
    expect(() => buckPlan({ ...order, flaws: [{ from: feet(20), to: feet(19) }] })).toThrow(
      "Cull should not end below the height at which it begins.",
    );
    expect(() => buckPlan({ ...order, products: [product({ longest: feet(4) })] })).toThrow(
      'The longest length of "sawlog" should not be below its shortest.',
    );
    const many = product({ longest: feet(100), step: feet(1) });
    expect(() => buckPlan({ ...order, products: [many, many, many] })).toThrow(
      "Your products should have at most 200 lengths in all. You have 279.",
    );
    expect(() => buckPlan({ ...order, products: [product({ step: feet(0.05) })] })).toThrow(
      'Step of "sawlog" should be between 0.1 and 100 ft. You have 0.05.',
    );
  });

  it("takes a tall stem and many lengths in its stride", () => {
    const order = {
      stem: stemOf(40, 200, 0.6),
      stump: feet(1),
      trim: feet(0.33),
      products: Array.from({ length: 8 }, (_, i) =>
        product({
          name: `grade ${i}`,
          smallestEnd: inches(6 + i),
          longest: feet(30),
          step: feet(1),
          price: 200 + 90 * i,
        }),
      ),
    };
    const logs = buckPlan(order);
    expect(logs.length).toBeGreaterThan(4);
    expect(logs.at(-1)?.to).toBeLessThan(200);
  });
});
