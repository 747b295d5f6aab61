import { describe, expect, it } from "vitest";
import { logRules, menuRules } from "../../src/core/log/rules";
import { logScaleRules, RuleSelectionName } from "../../src/functions/logs";

const header = menuRules.map(({ title }) => `${title} bf`);

describe("LOGSCALERULES", () => {
  it("heads each column with its rule, and sets the rules side by side", () => {
    const [heads, values, ...more] = logScaleRules([[14]], [[16]]);
    expect(heads).toEqual(header);
    expect(more).toEqual([]);
    const of = (title: string) => values?.[header.indexOf(`${title} bf`)] as unknown;
    expect(of("Doyle")).toBe(100);
    expect(of("Scribner Decimal C")).toBe(110); // Wengert 2001
    expect(of("International 1/4")).toBe(135); // Wengert 2001
  });

  it("keeps a log that one rule does not reach for the other rules", () => {
    const [, values] = logScaleRules([[3.9]], [[16]]);
    const of = (title: string) => values?.[header.indexOf(`${title} bf`)] as unknown;
    expect(of("Doyle")).toMatchObject({
      code: "#N/A",
      message: "The Doyle rule as published has no value below 4 in. You have 3.9.",
    });
    expect(of("Scribner Decimal C")).toMatchObject({
      code: "#N/A",
      message: "Scribner Decimal C as published has no value for 3.9 in x 16 ft.",
    });
    expect(of("Scribner (from memory)")).toBe(0); // 0.79 * 3.9^2 - 2 * 3.9 - 4 = 0.2
    expect(of("International 1/4")).toBe(5); // its four sections, worked by hand: 5.5
  });

  it("leaves out what menus leave out, unless all are asked for, and says what is from memory", () => {
    const [usual] = logScaleRules([[14]], [[16]], null as never, RuleSelectionName.usual);
    const [all, values] = logScaleRules([[14]], [[16]], null as never, RuleSelectionName.all);
    expect(usual).toEqual(header);
    const onSmallEnd = logRules.filter(({ measuredAt }) => measuredAt !== "middle");
    expect(all).toEqual(onSmallEnd.map(({ title }) => `${title} bf`));
    expect(all?.length).toBeGreaterThan(header.length);
    for (const [i, { fromMemory = false }] of onSmallEnd.entries())
      expect((all?.[i] as string).includes("from memory")).toBe(fromMemory);
    expect(values?.[all?.indexOf("Roy (from memory) bf") ?? NaN]).toBe(135); // 13^2 * 16 / 20 = 135.2
    expect(() => logScaleRules([[14]], [[16]], null as never, "Some" as never)).toThrow(
      'Rules should be one of: Usual, All. You have "Some".',
    );
  });

  it("takes the deduction off under every rule", () => {
    const [, gross] = logScaleRules([[20]], [[16]], [[0]]);
    const [, net] = logScaleRules([[20]], [[16]], [[50]]);
    for (const [column, value] of (gross ?? []).entries()) {
      expect(Math.abs((net?.[column] as number) - (value as number) / 2)).toBeLessThanOrEqual(5);
    }
  });

  it("says once what keeps a log from being read, in the first column", () => {
    const [, bad, good] = logScaleRules([[14], [14]], [[16], [16]], [[150], [0]]);
    expect(bad?.[0]).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("between 0 and 100 %. You have 150.") as string,
    });
    expect(bad?.slice(1)).toEqual(header.slice(1).map(() => ""));
    expect(good).toEqual(logScaleRules([[14]], [[16]])[1]);
  });

  it("gives each log of a column its row, in step with the column", () => {
    const spill = logScaleRules([[14], [""], [16]], [[16], [16], [16]]);
    expect(spill).toHaveLength(4);
    expect(spill[2]).toEqual(header.map(() => ""));
    expect(spill[3]).toEqual(logScaleRules([[16]], [[16]])[1]);
  });

  it("says that there are no logs yet when there are none", () => {
    for (const blank of [[[null]], [[""]], [[0]]]) {
      expect(logScaleRules(blank, [[16]])).toEqual([header, ["No logs yet", ...header.slice(1).map(() => "")]]);
    }
  });
});
