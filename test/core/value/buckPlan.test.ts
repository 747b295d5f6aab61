import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet, inches, type Feet } from "../../../src/core/basis/units";
import { newton } from "../../../src/core/log/cubic/newton";
import { smalian } from "../../../src/core/log/cubic/smalian";
import { doyle } from "../../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../../src/core/log/rules/internationalQuarter";
import { scribner } from "../../../src/core/log/rules/scribner";
import { buckPlan, type BuckOrder, type Product, type Stem } from "../../../src/core/value/buckPlan";
import { byFormula, byRule, byWood } from "../../../src/core/value/productMeasures";

/** A stem of a simple taper whose wood can be worked out: d = D (1 - h/H)^p. */
function stemOf(dbh: number, height: number, power: number): Stem {
  const above = (h: number) => Math.max(0, 1 - h / height);
  const woodAbove = (h: number) => ((0.005454154 * dbh * dbh * height) / (2 * power + 1)) * above(h) ** (2 * power + 1);
  return {
    height: feet(height),
    diameterAt: (h: Feet) => inches(dbh * above(h) ** power),
    woodBetween: (from, to) => woodAbove(from) - woodAbove(to),
  };
}

const product = (changes: Partial<Product> = {}): Product => ({
  name: "sawlog",
  smallestEnd: inches(8),
  shortest: feet(8),
  longest: feet(16),
  step: feet(2),
  measure: byRule(doyle),
  price: 400,
  ...changes,
});

const worth = (logs: readonly { readonly value: number }[]) => logs.reduce((sum, { value }) => sum + value, 0);

/**
 * The best that any way of cutting brings, tried one and all: at every foot either leave a foot of stem unsold or cut
 * any log that fits. No memory, no bound, no thought of where logs should begin.
 */
function bestOfAll({ stem, products, stump, trim, cull }: BuckOrder, from: number = stump): number {
  if (from >= stem.height) return 0;
  let best = bestOfAll({ stem, products, stump, trim, ...(cull && { cull }) }, from + 1);
  for (const { smallestEnd, shortest, longest, step, measure, price } of products) {
    for (let length: number = shortest; length <= longest; length += step) {
      const to = from + length + trim;
      if (to > stem.height || (cull && from < cull.to && to > cull.from)) continue;
      const smallEnd = stem.diameterAt(feet(to));
      if (smallEnd < smallestEnd) continue;
      const volume = measure.volume({
        smallEnd,
        largeEnd: () => stem.diameterAt(feet(from)),
        middle: () => stem.diameterAt(feet(from + length / 2)),
        length: feet(length),
        wood: () => stem.woodBetween(feet(from), feet(from + length)),
      });
      if (volume === undefined) continue;
      const value = (volume / measure.perPrice) * price;
      best = Math.max(best, value + bestOfAll({ stem, products, stump, trim, ...(cull && { cull }) }, to));
    }
  }
  return best;
}

const whole = (min: number, max: number) => fc.integer({ min, max });

const anyProduct = fc
  .record({
    end: whole(3, 12),
    shortest: whole(4, 9),
    more: whole(0, 6),
    step: whole(1, 4),
    measure: fc.constantFrom(
      byRule(doyle),
      byRule(scribner),
      byRule(internationalQuarter),
      byFormula(smalian),
      byFormula(newton),
      byWood,
    ),
    price: whole(0, 900),
  })
  .map(({ end, shortest, more, step, measure, price }) =>
    product({
      smallestEnd: inches(end),
      shortest: feet(shortest),
      longest: feet(shortest + more),
      step: feet(step),
      measure,
      price: measure.unit === "ft3" ? price / 300 : price,
    }),
  );

const anyOrder: fc.Arbitrary<BuckOrder> = fc
  .record({
    stem: fc.tuple(whole(8, 24), whole(14, 30), fc.constantFrom(0.4, 0.5, 0.8, 1)),
    products: fc.array(anyProduct, { minLength: 1, maxLength: 3 }),
    stump: whole(1, 2),
    trim: whole(0, 1),
    cull: fc.option(fc.tuple(whole(0, 20), whole(1, 6)), { nil: undefined }),
  })
  .map(({ stem, cull, products, stump, trim }) => ({
    stem: stemOf(...stem),
    products,
    stump: feet(stump),
    trim: feet(trim),
    ...(cull && { cull: { from: feet(cull[0]), to: feet(cull[0] + cull[1]) } }),
  }));

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

  it("keeps to the order: lengths, small ends, trim, cull, and no log into another", () => {
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
          if (order.cull) expect(from >= order.cull.to - 1e-9 || to <= order.cull.from + 1e-9).toBe(true);
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
    expect(() => buckPlan({ ...order, cull: { from: feet(20), to: feet(20) } })).toThrow(
      "Cull should end above the height at which it begins.",
    );
    expect(() => buckPlan({ ...order, products: [product({ longest: feet(4) })] })).toThrow(
      'The longest length of "sawlog" should not be below its shortest.',
    );
    const many = product({ longest: feet(100), step: feet(1) });
    expect(() => buckPlan({ ...order, products: [many, many, many] })).toThrow(
      "Your products should have at most 200 lengths in all. You have 279.",
    );
    expect(() => buckPlan({ ...order, products: [product({ step: feet(0.1) })] })).toThrow(
      'Step of "sawlog" should be between 0.3 and 100 ft. You have 0.1.',
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
