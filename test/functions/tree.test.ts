import { describe, expect, it } from "vitest";
import { smallEndRules } from "../../src/core/log/findLogRule";
import { menuRules } from "../../src/core/log/rules";
import { basalArea, treeLogs, TreeUnits, treeVolume, TreeVolumeRule } from "../../src/functions/tree";
import { formClass } from "../../src/functions/treeMeasures";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const notAvailable = (message: string) => expect.objectContaining({ code: "#N/A", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

describe("BASALAREA", () => {
  it("is 1.069 ft2 at 14 in: 196 pi / 576", () => expect(basalArea(cell(14))).toEqual([[near(1.069, 3)]]));

  it("keeps the shape, and passes over blanks and zeros", () => {
    expect(basalArea([[14, 24, null, "", 0, " "]])).toEqual([[near(1.069, 3), near(Math.PI, 9), "", "", "", ""]]);
  });

  it("is 0.0707 m2 at 30 cm: 0.09 pi / 4", () => {
    expect(basalArea(column(30), TreeUnits.Metric)).toEqual([[near(0.0225 * Math.PI, 12)]]);
  });

  it("says in the row what is wrong with it", () => {
    expect(basalArea(column("14.3in", 143, 14))).toEqual([
      [valueError('DBH needs a number, but the cell has "14.3in". Type just the number.')],
      [valueError("DBH should be between 1 and 80 in. You have 143. Missing a decimal point?")],
      [near(1.069, 3)],
    ]);
  });
});

describe("TREEVOLUME", () => {
  it("is 174 bf for a 22 in tree of one log by Doyle at form class 78, as the printed table has it", () => {
    expect(treeVolume(cell(22), cell(1), TreeVolumeRule.Doyle, cell(78))).toEqual([[near(174.24, 6)]]);
  });

  it("takes form class 78 when none is given, whichever way the host says so", () => {
    for (const leftOut of [undefined, null, "", 0]) {
      expect(treeVolume(column(22), column(1), TreeVolumeRule.Doyle, cell(leftOut))).toEqual([[near(174.24, 6)]]);
    }
  });

  it("reads columns of diameters, logs and form classes", () => {
    // By hand: 16 in at 80 % tops its first log at 12.8 in, at 78 % at 12.5 in; the second taper of 2 logs is 1.9 in.
    expect(treeVolume(column(16, 16, 16), column(1, 2, 2), TreeVolumeRule.Doyle, column(80, null, 80))).toEqual([
      [near(8.8 ** 2, 6)],
      [near(8.5 ** 2 + 6.6 ** 2, 6)],
      [near(8.8 ** 2 + 6.9 ** 2, 6)],
    ]);
  });

  it("passes over a tree without diameter or without logs", () => {
    expect(treeVolume(column(22, "", 0, 22, 22), column(1, 1, 1, null, 0), TreeVolumeRule.Doyle)).toEqual(
      column(near(174.24, 6), "", "", "", ""),
    );
  });

  it("reads DBH in centimeters and answers in board feet", () => {
    expect(treeVolume(cell(22 * 2.54), cell(1), TreeVolumeRule.Doyle, cell(null), TreeUnits.Metric)).toEqual([
      [near(174.24, 6)],
    ]);
  });

  it("knows rules by other spellings", () => {
    expect(treeVolume(cell(16), cell(3), cell("international"))).toEqual([[near(240.8, 1)]]);
    expect(treeVolume(cell(16), cell(3), cell(' scribner decimal-C "'))).toEqual([[190]]);
  });

  it("refuses an unknown rule for the whole column", () => {
    const list = smallEndRules.map(({ title }) => title).join(", ");
    expect(() => treeVolume(column(22), column(1), cell("Dole"))).toThrow(
      `Rule should be one of: ${list}. You have "Dole".`,
    );
    expect(() => treeVolume(column(22), column(1), cell(null))).toThrow(
      `Rule should be one of: ${list}. You have a blank.`,
    );
  });

  it("refuses a rule that wants another diameter than a tree's logs have", () => {
    expect(() => treeVolume(column(22), column(1), cell("Two-thirds"))).toThrow(
      "Two-thirds of middle diameter needs the middle diameter, but here the small end is given.",
    );
  });

  it("says where the tables end, in the row that lies beyond", () => {
    expect(treeVolume(column(9, 22, 34, 10), column(1, 0.5, 4, 3), TreeVolumeRule.ScribnerDecimalC)).toEqual([
      [notAvailable("The form-class table as published has no value below 10 in DBH. You have 9.")],
      [notAvailable("The form-class table as published has no value below 1 log of 16 ft. You have 0.5.")],
      [notAvailable("Upper-log tapers of more than 3 logs are known from 12 to 32 in DBH. You have 4 logs at 34 in.")],
      [
        notAvailable(
          "Log 3 of this tree is 5.2 in at its small end. Scribner Decimal C as published has no value for 5.2 in x 16 ft.",
        ),
      ],
    ]);
  });

  it("says what is off in logs and form class", () => {
    expect(treeVolume(column(22, 22, 22), column(25, 1, 1), TreeVolumeRule.Doyle, column(78, 780, 60))).toEqual([
      [valueError("Logs should be between 0.1 and 10 logs of 16 ft. You have 25. Missing a decimal point?")],
      [valueError("Form class should be between 0 and 100 %. You have 780. Missing a decimal point?")],
      [notAvailable("The form-class table as published has no value below 65 % form class. You have 60.")],
    ]);
  });

  it("refuses lists of different lengths", () => {
    expect(() => treeVolume(column(22, 20), column(1, 1, 1), TreeVolumeRule.Doyle)).toThrow(
      "These lists need the same number of rows: DBH has 2, Logs has 3.",
    );
  });
});

describe("TREELOGS", () => {
  it("is 12.5, 11.0 and 9.3 in for a 16 in tree of 3 logs", () => {
    expect(treeLogs(cell(16), cell(3))).toEqual([
      ["Log", "Small end in", "Large end in", "Length ft"],
      [1, 12.5, 16, 16],
      [2, 11, 12.5, 16],
      [3, 9.3, 11, 16],
    ]);
  });

  it("answers in centimeters and meters when metric", () => {
    const [header, butt] = treeLogs(cell(16 * 2.54), cell(1), cell(null), TreeUnits.Metric);
    expect(header).toEqual(["Log", "Small end cm", "Large end cm", "Length m"]);
    expect(butt).toEqual([1, near(31.75, 9), near(40.64, 9), near(4.8768, 9)]);
  });

  it("says so when there is no tree yet, in a table of full width", () => {
    expect(treeLogs(cell(null), cell(3))).toEqual([
      ["Log", "Small end in", "Large end in", "Length ft"],
      ["No trees yet", "", "", ""],
    ]);
  });

  it("takes one tree, and says where the tables end", () => {
    expect(() => treeLogs(column(16, 18), cell(3))).toThrow("DBH should be one cell here. You have 2.");
    expect(() => treeLogs(cell(9), cell(1))).toThrow(
      "The form-class table as published has no value below 10 in DBH. You have 9.",
    );
  });
});

describe("FORMCLASS", () => {
  it("is 78 for 11.2 in inside bark on a 14.3 in tree: 78.32", () => {
    expect(formClass(cell(11.2), cell(14.3))).toEqual([[near(78.32, 2)]]);
  });

  it("passes over blanks and refuses a top thicker than the tree", () => {
    expect(formClass(column(11.2, "", 15), column(null, 14.3, 12))).toEqual([
      [""],
      [""],
      [valueError("Form class should be between 0 and 100 %. You have 125. Are the two diameters swapped?")],
    ]);
  });
});

describe("the menus that a formula offers", () => {
  it("name log rules of the menu, in its order; the build adds those that are lacking", () => {
    const offered: string[] = Object.values(TreeVolumeRule);
    expect(offered).toEqual(menuRules.map(({ title }) => title).filter((title) => offered.includes(title)));
  });
  it("hold both unit systems", () => expect(Object.values(TreeUnits)).toEqual(["imperial", "metric"]));
});
