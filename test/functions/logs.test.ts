import { describe, expect, it } from "vitest";
import { cubicFormulas } from "../../src/core/log/cubic";
import { logRules } from "../../src/core/log/rules";
import { scaleRoundings } from "../../src/core/log/scaleRounding";
import { CubicFormulaName } from "../../src/functions/logCubic";
import { LogRuleName, logScale, LogUnits, ScaleRoundingName } from "../../src/functions/logs";
import { expectAsPrinted } from "../support/expectAsPrinted";
import { numberIn, published } from "../support/published";

const { doyle, scribnerDecimalC, internationalQuarter } = LogRuleName;
const problem = (code: string, message: string) => expect.objectContaining({ code, message }) as unknown;
const typed = (text: string) => text as LogRuleName;

describe("the texts that Excel offers", () => {
  it.each([
    ["rules", Object.values(LogRuleName), logRules],
    ["roundings", Object.values(ScaleRoundingName), scaleRoundings],
    ["cubic formulas", Object.values(CubicFormulaName), cubicFormulas],
  ])("are %s of the list in core, in its order", (_what, offered, list) => {
    const titles = list.map(({ title }) => title);
    expect(offered).toEqual(titles.filter((title) => (offered as string[]).includes(title)));
    expect(offered.length).toBeGreaterThan(0);
  });
});

describe("LOGSCALE", () => {
  it("scales one log: 14 in x 16 ft is 100 bf by Doyle, in any spelling of the rule", () => {
    for (const rule of [doyle, typed("doyle"), typed(" DOYLE "), [["Doyle"]] as never]) {
      expect(logScale([[14]], [[16]], rule)).toEqual([[100]]);
    }
    expect(logScale([[20]], [[16]], typed("international 1/4 in."))).toEqual([[290]]); // Wengert 2001
    expect(logScale([[20]], [[16]], typed("International"))).toEqual([[290]]);
  });

  it("answers every read cell of the Decimal C table in one call", () => {
    const { rows } = published("log/scribnerDecimalC.csv");
    const column = (of: string) => rows.map((row) => [numberIn(row, of)]);
    expect(logScale(column("diameter"), column("length"), scribnerDecimalC)).toEqual(column("volume"));
  });

  it("spreads one length over a column, skips a blank, and keeps a problem in its own cell", () => {
    expect(logScale([[14], [""], [null], [0], [3], ["14.3in"], [143]], [[16]], doyle)).toEqual([
      [100],
      [""],
      [""],
      [""],
      [problem("#N/A", "The Doyle rule as published has no value below 4 in. You have 3.")],
      [problem("#VALUE!", 'Diameter needs a number, but the cell has "14.3in". Type just the number.')],
      [problem("#VALUE!", "Diameter should be between 1 and 120 in. You have 143. Missing a decimal point?")],
    ]);
    expect(logScale([[41]], [[16]], scribnerDecimalC)).toEqual([
      [problem("#N/A", "Scribner Decimal C as published has no value for 41 in x 16 ft.")],
    ]);
  });

  it("takes a deduction off, cell by cell, and asks about a share of one", () => {
    expect(logScale([[16], [16], [16], [16]], [[16]], doyle, [[15], [""], [100], [0.15]])).toEqual([
      [122],
      [144],
      [0],
      [problem("#VALUE!", "Deduction is 0.15: 0.15 %, or 15 %? Type 15 for 15 %; below 1 % nothing is deducted.")],
    ]);
    expect(logScale([[16]], [[16]], doyle, [[101]])).toEqual([
      [problem("#VALUE!", "Deduction should be between 0 and 100 %. You have 101. Missing a decimal point?")],
    ]);
  });

  it("rounds as the rule does, or not", () => {
    const rounded = (round?: ScaleRoundingName | null) =>
      logScale([[12]], [[10]], internationalQuarter, [[0]], round as never);
    expect([rounded(), rounded(null), rounded(ScaleRoundingName.asTheRuleDoes)]).toEqual([[[55]], [[55]], [[55]]]);
    expectAsPrinted(rounded(ScaleRoundingName.none)[0]?.[0] as number, 56.67, 0.01); // Michigan 290.401, worked by hand
    expect(logScale([[16]], [[16]], doyle, [[15]], ScaleRoundingName.none)[0]?.[0]).toBeCloseTo(144 * 0.85, 9);
    expect(() => rounded("Up" as ScaleRoundingName)).toThrow(
      'Round should be one of: As the rule does, None. You have "Up".',
    );
  });

  it("scales a long log in segments", () => {
    const long = (rule: LogRuleName, longest: unknown) =>
      logScale([[12]], [[32]], rule, null as never, null as never, longest);
    expect(long(scribnerDecimalC, 20)).toEqual([[160]]); // 80 + 80: no taper
    expect(long(internationalQuarter, 16)).toEqual([[230]]); // 95 + 135: 12 and 14 in
    expect(long(scribnerDecimalC, null)).toEqual([
      [problem("#N/A", "Scribner Decimal C as published has no value for 12 in x 32 ft.")],
    ]);
    expect(() => long(scribnerDecimalC, 3)).toThrow(
      "Longest scaling length should be between 4 and 120 ft. You have 3.",
    );
  });

  it("reads metric measures, and answers in board feet all the same", () => {
    const metric = (diameter: number, length: number, rule: LogRuleName) =>
      logScale(
        [[diameter]],
        [[length]],
        rule,
        null as never,
        null as never,
        null,
        null as never,
        null as never,
        LogUnits.metric,
      );
    expect(metric(35.56, 4.8768, doyle)).toEqual([[100]]); // 14 in x 16 ft
    expect(metric(36.83, 4.8768, scribnerDecimalC)).toEqual([[110]]); // 14.5 in x 16 ft, read at 14 in
    expect(
      logScale(
        [[30.48]],
        [[9.7536]],
        scribnerDecimalC,
        null as never,
        null as never,
        6.096,
        null as never,
        null as never,
        LogUnits.metric,
      ),
    ).toEqual([[160]]); // 12 in x 32 ft, at most 20 ft at a time
    expect(metric(2, 5, doyle)).toEqual([
      [problem("#VALUE!", "Diameter should be between 2.54 and 304.8 cm. You have 2.")],
    ]);
  });

  it("names the rules when the text is none of them, or more than one", () => {
    const list = logRules.map(({ title }) => title).join(", ");
    expect(() => logScale([[14]], [[16]], typed("Doile"))).toThrow(`Rule should be one of: ${list}. You have "Doile".`);
    expect(() => logScale([[14]], [[16]], null as never)).toThrow(`Rule should be one of: ${list}. You have a blank.`);
    expect(() => logScale([[14]], [[16]], [["Doyle"], ["Scribner"]] as never)).toThrow(
      "Rule should be one text, not a list of them.",
    );
  });

  it("refuses lists of different lengths", () => {
    expect(() => logScale([[14], [15]], [[16], [16], [16]], doyle)).toThrow(
      "These lists need the same number of rows: Diameter has 2, Length has 3.",
    );
  });
});
