import { expect, it } from "vitest";
import { logScale, LogRuleName, LogUnits } from "../../src/functions/logs";

/** Worked by hand: gross scale, less the deduction, an exact half up to the rule's next step. */
it.each([
  {
    diameter: 12,
    length: 20,
    rule: LogRuleName.internationalQuarter,
    deduction: 34,
    exact: "125 x 0.66 = 82.5",
    net: 85,
  },
  {
    diameter: 8,
    length: 20,
    rule: LogRuleName.internationalQuarter,
    deduction: 55,
    exact: "50 x 0.45 = 22.5",
    net: 25,
  },
  { diameter: 6, length: 18, rule: LogRuleName.doyle, deduction: 90, exact: "5 x 0.10 = 0.5", net: 1 },
])("an exact half of net scale goes up: $exact gives $net", ({ diameter, length, rule, deduction, net }) => {
  expect(logScale([[diameter]], [[length]], rule, [[deduction]])).toEqual([[net]]);
});

it("a 10 in by 14 ft log is 31.5 bf by Doyle and scales 32, in centimetres as in inches", () => {
  const inches = logScale([[10]], [[14]], LogRuleName.doyle);
  const metric = logScale(
    [[25.4]],
    [[4.2672]],
    LogRuleName.doyle,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    LogUnits.metric,
  );
  expect([inches, metric]).toEqual([[[32]], [[32]]]);
});
