import fc from "fast-check";
import { expect, it } from "vitest";
import { dollarsPerMbf, feet, inches } from "../../../src/core/basis/units";
import { logRule } from "../../../src/core/log/findLogRule";
import { grossScale } from "../../../src/core/log/grossScale";
import { menuRules } from "../../../src/core/log/rules";
import { rulePrice } from "../../../src/core/value/rulePrice";
import { expectAsPrinted } from "../../support/expectAsPrinted";

const log = (diameter: number, length: number) => ({ diameter: inches(diameter), length: feet(length) });
const price = (offered: number, diameter: number, from: string, to: string) =>
  rulePrice(dollarsPerMbf(offered), log(diameter, 16), logRule(from), logRule(to));

it("is 370 by International for 500 by Doyle on a log of 14 in x 16 ft: 100 bf against 135", () => {
  expectAsPrinted(price(500, 14, "Doyle", "International 1/4"), 370, 1); // 135 bf: Wengert 2001
});

it("is no one factor: it turns with the size of the log", () => {
  // 64 and 400 bf by Doyle (worked by hand), 95 and 425 bf by International (Wengert 2001)
  expectAsPrinted(price(500, 12, "Doyle", "International 1/4"), (500 * 64) / 95, 1e-6);
  expectAsPrinted(price(500, 24, "Doyle", "International 1/4"), (500 * 400) / 425, 1e-6);
});

it("brings the same money, and leads back", () => {
  const rule = fc.constantFrom(...menuRules);
  const given = { offered: fc.double({ min: 1, max: 5000, noNaN: true }), diameter: fc.integer({ min: 8, max: 30 }) };
  fc.assert(
    fc.property(given.offered, given.diameter, rule, rule, (offered, diameter, from, to) => {
      const wanted = rulePrice(dollarsPerMbf(offered), log(diameter, 12), from, to);
      const money = wanted * grossScale(to, log(diameter, 12));
      expect(money).toBeCloseTo(offered * grossScale(from, log(diameter, 12)), 6);
      expect(rulePrice(wanted, log(diameter, 12), to, from)).toBeCloseTo(offered, 6);
    }),
  );
});

it("says so where nothing is scaled by the rule wanted", () => {
  expect(() => price(500, 4, "International 1/4", "Doyle")).toThrow(
    "By Doyle a log of 4 in x 16 ft scales 0 bf, so no price by it brings the same money.",
  );
  expect(() => price(-1, 14, "Doyle", "Vermont")).toThrow("Price should be 0 or more $ per MBF. You have -1.");
});
