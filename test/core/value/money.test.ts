import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dollars, dollarsPerMbf } from "../../../src/core/basis/units";
import { breakEvenPrice } from "../../../src/core/value/breakEvenPrice";
import { compareWays, type Way } from "../../../src/core/value/compareWays";
import { homeSawnNet } from "../../../src/core/value/homeSawnNet";
import { valueRange } from "../../../src/core/value/valueRange";

const share = fc.double({ min: 0, max: 1, noNaN: true });
const amount = fc.double({ min: 0, max: 1000, noNaN: true });

describe("value of timber", () => {
  it("lies in its range for every volume within the margin and every price within the bounds", () => {
    fc.assert(
      fc.property(amount, amount, amount, amount, share, share, share, (volume, margin, lowPrice, spread, a, b, c) => {
        const highPrice = lowPrice + spread;
        const range = valueRange({
          volume,
          margin,
          price: dollarsPerMbf(lowPrice + c * spread),
          priceLow: dollarsPerMbf(lowPrice),
          priceHigh: dollarsPerMbf(highPrice),
        });
        const inside = Math.max(0, volume - margin + 2 * a * margin) * (lowPrice + b * spread);
        expect(inside).toBeGreaterThanOrEqual(range.low - 1e-6);
        expect(inside).toBeLessThanOrEqual(range.high + 1e-6);
        expect(range.low).toBeLessThanOrEqual(range.value + 1e-6);
        expect(range.value).toBeLessThanOrEqual(range.high + 1e-6);
      }),
    );
  });

  it("comes out even at the break-even price: what home sawing leaves is what the logs would bring", () => {
    fc.assert(
      fc.property(amount, amount, fc.double({ min: 0.1, max: 100, noNaN: true }), (logValue, costs, lumber) => {
        const price = breakEvenPrice(dollars(logValue), dollars(costs), lumber);
        const { net } = homeSawnNet({
          lumberValue: dollars(price * lumber),
          hours: 0,
          payPerHour: 0,
          otherCosts: dollars(costs),
        });
        expect(net).toBeCloseTo(logValue, 6);
      }),
    );
  });
});

describe("ways compared", () => {
  const anyWay = fc
    .tuple(fc.integer({ min: -50, max: 50 }), fc.nat({ max: 30 }), fc.nat({ max: 30 }))
    .map(([value, down, up]): Way => {
      return { name: "a way", value: dollars(value), low: dollars(value - down), high: dollars(value + up) };
    });

  it("a way with a rank is out of reach of every other way", () => {
    fc.assert(
      fc.property(fc.array(anyWay, { minLength: 2, maxLength: 6 }), (ways) => {
        const ranked = compareWays(ways);
        const known = ranked.filter(({ rank }) => rank !== "No figures yet");
        for (const way of known) {
          const others = known.filter((other) => other !== way);
          if (way.rank === 1) for (const other of others) expect(other.high).toBeLessThan(way.low);
          const apart = others.every((other) => other.high < way.low || way.high < other.low);
          expect(typeof way.rank === "number").toBe(apart);
        }
      }),
    );
  });
});
