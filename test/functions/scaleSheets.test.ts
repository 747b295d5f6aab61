import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logScale, type LogRuleName } from "../../src/functions/logs";
import { cardScale, rulePrice, scaleSheet, ScaleSheetUnits } from "../../src/functions/scaleSheets";
import { expectAsPrinted } from "../support/expectAsPrinted";
import { numberIn, published } from "../support/published";

const none = null as never;
const problem = (code: string, message: string) => expect.objectContaining({ code, message }) as unknown;
const column = (values: readonly unknown[]) => values.map((value) => [value]);
const HEADER = ["Species", "Logs", "Gross bf", "Net bf", "Defect %"];

/** 8 to 14 in of the Doyle table read, in the shape of a printed card. */
const doyleCard = [
  ["in \\ ft", 8, 12, 16],
  [8, 8, 12, 16],
  [10, 18, 27, 36],
  [12, 32, 48, 64],
  [14, 50, 75, 100],
];

describe("SCALESHEET", () => {
  const species = column(["RO", "sm", "ro", "", "RO"]);
  const diameter = column([14, 12, 16, 20, ""]);

  it("adds logs up by species, those without a name last but one, and all in the end", () => {
    // Doyle: 100, 64, 144 and 256 bf; 50 % off 100 is 50, 10 % off 64 is 57.6
    expect(scaleSheet(species, diameter, [[16]], [["Doyle"]], column([50, 10, "", 0, 99]))).toEqual([
      HEADER,
      ["RO", 2, 244, 194, (100 * 50) / 244],
      ["sm", 1, 64, 58, (100 * 6) / 64],
      ["(blank)", 1, 256, 256, 0],
      ["All species", 4, 564, 508, (100 * 56) / 564],
    ]);
  });

  it("takes a column of one rule in any spelling, and refuses two", () => {
    const lengths = column([16, 16, 16, 16, 16]);
    const same = scaleSheet(species, diameter, lengths, column(["Doyle", "doyle", " DOYLE", "Doyle", "Scribner"]));
    expect(same).toEqual(scaleSheet(species, diameter, lengths, [["Doyle"]]));
    expect(() =>
      scaleSheet(species, diameter, lengths, column(["Doyle", "International", "Doyle", "Vermont", ""])),
    ).toThrow("One rule per sheet; you have Doyle, International 1/4 and Vermont.");
    expect(() => scaleSheet(species, diameter, lengths, column(["Doyle", "Scribner", "Doyle", "Doyle", ""]))).toThrow(
      "One rule per sheet; you have Doyle and Scribner (from memory).",
    );
  });

  it("names the first bad row and counts the others, rather than leave a log out", () => {
    const sheet = (...diameters: unknown[]) => scaleSheet([["RO"]], column(diameters), [[16]], [["Doyle"]]);
    expect(() => sheet(14, "14.3in", 143)).toThrow(
      'Row 2: Diameter needs a number, but the cell has "14.3in". Type just the number. And 1 more row has a problem.',
    );
    expect(() => sheet(14, 3)).toThrow("Row 2: The Doyle rule as published has no value below 4 in. You have 3.");
    expect(() => scaleSheet([["RO"]], column([14, 15]), column([16, ""]), [["Doyle"]])).toThrow(
      "Row 2: the length is missing.",
    );
    expect(() => scaleSheet([["RO"]], column([14, 15]), [[16]], column(["Doyle", "Dole"]))).toThrow(
      "Row 2: Rule should",
    );
    expect(() => scaleSheet([["RO"]], column([14, 15]), [[16]], [["Doyle"]], column([0.15, 0]))).toThrow(
      "Row 1: Deduction is 0.15: 0.15 %, or 15 %?",
    );
    expect(() => scaleSheet([["RO"]], column([14, 15]), column([16, 16, 16]), [["Doyle"]])).toThrow(
      "These lists need the same number of rows: Diameter has 2, Length has 3.",
    );
  });

  it("adds up to what LOGSCALE gives for each log", () => {
    const logs = fc.array(
      fc.record({
        kind: fc.constantFrom("ro", "wo", "sm"),
        across: fc.integer({ min: 6, max: 20 }),
        along: fc.constantFrom(8, 12, 16, 24),
        off: fc.constantFrom(0, 10, 100),
      }),
      { minLength: 1, maxLength: 12 },
    );
    const rule = fc.constantFrom("Doyle", "Scribner Decimal C", "International 1/4");
    fc.assert(
      fc.property(logs, rule, (list, by) => {
        const of = (name: "across" | "along" | "off") => column(list.map((one) => one[name]));
        const args = [of("across"), of("along"), by as LogRuleName] as const;
        const sum = (cells: unknown[][]) => cells.flat().reduce<number>((total, one) => total + (one as number), 0);
        const gross = sum(logScale(...args, none, none, 16));
        const net = sum(logScale(...args, of("off"), none, 16));
        const sheet = scaleSheet(
          column(list.map(({ kind }) => kind)),
          of("across"),
          of("along"),
          [[by]],
          of("off"),
          none,
          16,
        );
        expect(sheet.at(-1)?.slice(0, 4)).toEqual(["All species", list.length, gross, net]);
        expect(sum(column(sheet.slice(1, -1).map((row) => row[2] as unknown)))).toBe(gross);
      }),
      { numRuns: 50 },
    );
  });

  it("goes by a buyer's card, reads metric, and says when there are no logs", () => {
    expect(scaleSheet([["RO"]], column([14, 10]), [[17]], doyleCard)[1]).toEqual(["RO", 2, 136, 136, 0]);
    expect(
      scaleSheet([["RO"]], [[35.56]], [[4.8768]], [["Doyle"]], none, none, none, none, none, ScaleSheetUnits.metric)[1],
    ).toEqual(["RO", 1, 100, 100, 0]); // 14 in x 16 ft
    for (const blank of [[[""]], [[null]], column(["", "", ""])])
      expect(scaleSheet(blank, blank, blank, [["Doyle"]])).toEqual([HEADER, ["No logs yet", "", "", "", ""]]);
  });

  it("leaves the defect open where the gross scale is 0", () => {
    expect(scaleSheet([["RO"]], [[4]], [[16]], [["Doyle"]])[1]).toEqual(["RO", 1, 0, 0, ""]);
  });
});

describe("CARDSCALE", () => {
  it("gives every read cell of a printed table, pasted as a card", () => {
    const { rows } = published("log/scribnerDecimalC.csv");
    const lengths = [6, 8, 10, 12, 14, 16];
    const cell = (diameter: number, length: number) => {
      const row = rows.find((one) => numberIn(one, "diameter") === diameter && numberIn(one, "length") === length);
      return row ? numberIn(row, "volume") : "";
    };
    const diameters = Array.from({ length: 15 }, (_, i) => 6 + i);
    const card = [
      ["", ...lengths],
      ...diameters.map((diameter) => [diameter, ...lengths.map((length) => cell(diameter, length))]),
    ];
    const of = (name: string) => column(rows.map((row) => numberIn(row, name)));
    expect(cardScale(of("diameter"), of("length"), card)).toEqual(of("volume"));
  });

  it("reads the card as its owner does, takes a deduction off, and scales long logs in segments", () => {
    expect(cardScale(column([13, 13.1, 12]), column([16, 16, 15.9]), doyleCard)).toEqual([[64], [100], [48]]);
    expect(cardScale([[14]], [[16]], doyleCard, [[15]])).toEqual([[85]]);
    expect(cardScale([[14]], [[32]], doyleCard, none, none, 16)).toEqual([[200]]);
    expect(cardScale([[15.01], [""], [14]].slice(0, 3), column([16, 16, 7.9]), doyleCard)).toEqual([
      [problem("#N/A", "Buyer's card as published has no value for 15.01 in x 16 ft.")],
      [""],
      [problem("#N/A", "Buyer's card as published has no value for 14 in x 7.9 ft.")],
    ]);
  });

  it("passes over blank rows and columns around the card, and knows a metric one", () => {
    const ample = [...doyleCard.map((row) => [...row, ""]), ["", "", "", "", ""]];
    expect(cardScale([[14]], [[16]], ample)).toEqual([[100]]);
    const metric = [
      ["", 4, 5],
      [30, 50, 60],
      [35, 70, 90],
    ];
    expect(
      cardScale(column([35, 32.5, 33]), [[5.2]], metric, none, none, none, none, none, ScaleSheetUnits.metric),
    ).toEqual([[90], [60], [90]]);
  });

  it("says what is wrong with a card", () => {
    const of = (card: unknown[][]) => () => cardScale([[14]], [[16]], card);
    expect(of([["Doyle"]])).toThrow(
      "Card should be a range with lengths in its first row and diameters in its first column. You have one row or column.",
    );
    expect(
      of([
        ["", ""],
        ["", ""],
      ]),
    ).toThrow("The card is blank.");
    expect(
      of([
        ["", 16],
        [14, "x"],
      ]),
    ).toThrow('Card board feet needs a number, but the cell has "x".');
    expect(
      of([
        ["", 16, ""],
        [14, 100, 110],
      ]),
    ).toThrow("Card length is missing beside figures of the card.");
    expect(
      of([
        ["", 16],
        ["", 100],
      ]),
    ).toThrow("Card diameter is missing beside figures of the card.");
    expect(
      of([
        ["", 16, 12],
        [14, 100, 75],
      ]),
    ).toThrow("The lengths of a card should grow. You have 12 ft after 16 ft.");
    expect(
      of([
        ["", 16],
        [140, 100],
      ]),
    ).toThrow("Card diameter should be between 1 and 120 in. You have 140.");
  });
});

describe("RULEPRICE", () => {
  it("is 370 by International for 500 by Doyle at 14 in x 16 ft, log by log down a column", () => {
    const answer = rulePrice([[500]], column([14, 24, ""]), [[16]], [["Doyle"]], [["International 1/4"]]);
    expectAsPrinted(answer[0]?.[0] as number, 370, 1);
    expectAsPrinted(answer[1]?.[0] as number, 470.59, 0.01); // 500 * 400 / 425
    expect(answer[2]).toEqual([""]);
  });

  it("takes a buyer's card for a rule", () => {
    expect(rulePrice([[500]], [[14]], [[16]], doyleCard, [["Doyle"]])).toEqual([[500]]);
    expect(rulePrice([[500]], [[35.56]], [[4.8768]], [["Doyle"]], [["Doyle"]], ScaleSheetUnits.metric)).toEqual([
      [500],
    ]);
  });

  it("refuses rules that one diameter cannot serve", () => {
    expect(() => rulePrice([[500]], [[14]], [[16]], [["Doyle"]], [["Two-thirds"]])).toThrow(
      "Two-thirds of middle diameter needs the middle diameter, but here the small end is given.",
    );
  });
});
