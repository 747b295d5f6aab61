import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import { buckHabits } from "../../../src/core/value/buckHabits";
import type { BuckOrder, Stem } from "../../../src/core/value/buckOrder";
import { buckPlan } from "../../../src/core/value/buckPlan";
import { soundStretches } from "../../../src/core/value/soundStretches";
import { anyOrder, product, stemOf, worth } from "../../support/bucking";

const bestWorth = (order: BuckOrder) => {
  try {
    return worth(buckPlan(order));
  } catch {
    return 0;
  }
};

/** A habit worked out plainly: the same length from the bottom of each sound part, sold as what pays most. */
function worthOfLength({ stem, products, stump, trim, flaws = [] }: BuckOrder, length: number): number {
  let sum = 0;
  let at: number = stump;
  while (at + length + trim <= stem.height + 1e-9) {
    const to = at + length + trim;
    const inTheWay = flaws.filter((flaw) => at < flaw.to && to > flaw.from);
    if (inTheWay.length > 0) {
      at = Math.max(...inTheWay.map((flaw) => flaw.to));
      continue;
    }
    const smallEnd = stem.diameterAt(feet(to));
    const bottom = at;
    const values = products
      .filter(({ shortest, longest, step, smallestEnd }) => {
        const steps = (length - shortest) / step;
        return smallEnd >= smallestEnd && length <= longest && steps >= 0 && Number.isInteger(steps);
      })
      .map(({ measure, price }) => {
        const volume = measure.volume({
          smallEnd,
          largeEnd: () => stem.diameterAt(feet(bottom)),
          middle: () => stem.diameterAt(feet(bottom + length / 2)),
          length: feet(length),
          wood: () => stem.woodBetween(feet(bottom), feet(bottom + length)),
        });
        return ((volume ?? 0) / measure.perPrice) * price;
      });
    if (values.length === 0) at += 1e9;
    sum += Math.max(0, ...values);
    at = to;
  }
  return sum;
}

describe("habits of cutting a stem", () => {
  it("never bring more than the best plan, on 500 short stems", () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const best = bestWorth(order);
        for (const { value } of buckHabits(order)) expect(value).toBeLessThanOrEqual(best + 1e-9);
        for (let length = 4; length <= 15; length += 1)
          expect(worthOfLength(order, length)).toBeLessThanOrEqual(best + 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it("of one length are worth what they come to by plain cutting", () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        for (const { length, value } of buckHabits(order))
          if (length !== undefined) expect(value).toBeCloseTo(worthOfLength(order, length), 9);
      }),
      { numRuns: 200 },
    );
  });

  it("are worked out by hand for a cylinder of 33 ft: two of 16, four of 8, or two of 16 as the longest", () => {
    const cylinder: Stem = { height: feet(33), diameterAt: () => 10 as never, woodBetween: (from, to) => to - from };
    const order = {
      stem: cylinder,
      stump: feet(1),
      trim: feet(0),
      products: [
        product({ name: "short", shortest: feet(8), longest: feet(8), price: 150 }),
        product({ name: "long", shortest: feet(16), longest: feet(16), price: 200 }),
      ],
    };
    // Doyle: 18 bf in 8 ft, 36 bf in 16 ft of a 10-inch log.
    expect(buckHabits(order).map(({ length, logs, value }) => [length, logs.length, Number(value.toFixed(6))])).toEqual(
      [
        [8, 4, 10.8],
        [16, 2, 14.4],
        [undefined, 2, 14.4],
      ],
    );
  });

  it("are left out where they sell nothing", () => {
    const order = {
      stem: stemOf(12, 40, 1),
      stump: feet(1),
      trim: feet(0),
      products: [product({ shortest: feet(12) })],
    };
    expect(buckHabits(order).map(({ length }) => length)).toEqual([12, undefined]);
  });
});

describe("what is sound between flaws", () => {
  const between = (...flaws: readonly (readonly [number, number])[]) =>
    soundStretches(
      feet(1),
      feet(60),
      flaws.map(([from, to]) => ({ from: feet(from), to: feet(to) })),
    );

  it.each([
    [[], [[1, 60]]],
    [
      [[20, 24]],
      [
        [1, 20],
        [24, 60],
      ],
    ],
    [
      [
        [40, 40],
        [20, 24],
      ],
      [
        [1, 20],
        [24, 40],
        [40, 60],
      ],
    ],
    [
      [
        [20, 30],
        [25, 28],
      ],
      [
        [1, 20],
        [30, 60],
      ],
    ],
    [
      [
        [0, 12],
        [50, 400],
      ],
      [[12, 50]],
    ],
    [[[0, 400]], []],
  ] as const)("%j leaves %j", (flaws, left) => {
    expect(between(...flaws)).toEqual(left);
  });
});
