import fc from "fast-check";
import { feet, inches, type Feet } from "../../src/core/basis/units";
import { newton } from "../../src/core/log/cubic/newton";
import { smalian } from "../../src/core/log/cubic/smalian";
import { doyle } from "../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../src/core/log/rules/internationalQuarter";
import { scribner } from "../../src/core/log/rules/scribner";
import type { BuckOrder, Product, Stem } from "../../src/core/value/buckOrder";
import { byFormula, byRule, byWood } from "../../src/core/value/productMeasures";

/** A stem of a simple taper whose wood can be worked out: d = D (1 - h/H)^p. */
export function stemOf(dbh: number, height: number, power: number): Stem {
  const above = (h: number) => Math.max(0, 1 - h / height);
  const woodAbove = (h: number) => ((0.005454154 * dbh * dbh * height) / (2 * power + 1)) * above(h) ** (2 * power + 1);
  return {
    height: feet(height),
    diameterAt: (h: Feet) => inches(dbh * above(h) ** power),
    woodBetween: (from, to) => woodAbove(from) - woodAbove(to),
  };
}

export const product = (changes: Partial<Product> = {}): Product => ({
  name: "sawlog",
  smallestEnd: inches(8),
  shortest: feet(8),
  longest: feet(16),
  step: feet(2),
  measure: byRule(doyle),
  price: 400,
  ...changes,
});

export const worth = (logs: readonly { readonly value: number }[]) => logs.reduce((sum, { value }) => sum + value, 0);

/**
 * The best that any way of cutting brings, tried one and all: at every foot either leave a foot of stem unsold or cut
 * any log that fits. No memory, no bound, no thought of where logs should begin.
 */
export function bestOfAll(order: BuckOrder, from: number = order.stump): number {
  const { stem, products, trim, flaws = [] } = order;
  if (from >= stem.height) return 0;
  let best = bestOfAll(order, from + 1);
  for (const { smallestEnd, shortest, longest, step, measure, price } of products) {
    for (let length: number = shortest; length <= longest; length += step) {
      const to = from + length + trim;
      if (to > stem.height || flaws.some((flaw) => from < flaw.to && to > flaw.from)) continue;
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
      best = Math.max(best, value + bestOfAll(order, to));
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

export const anyOrder: fc.Arbitrary<BuckOrder> = fc
  .record({
    stem: fc.tuple(whole(8, 24), whole(14, 30), fc.constantFrom(0.4, 0.5, 0.8, 1)),
    products: fc.array(anyProduct, { minLength: 1, maxLength: 3 }),
    stump: whole(1, 2),
    trim: whole(0, 1),
    flaws: fc.array(fc.tuple(whole(0, 20), whole(0, 6)), { maxLength: 3 }),
  })
  .map(({ stem, flaws, products, stump, trim }) => ({
    stem: stemOf(...stem),
    products,
    stump: feet(stump),
    trim: feet(trim),
    flaws: flaws.map(([from, long]) => ({ from: feet(from), to: feet(from + long) })),
  }));
