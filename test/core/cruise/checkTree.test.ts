import { describe, expect, it } from "vitest";
import { inches } from "../../../src/core/basis/units";
import { checkTree, type TallyLine } from "../../../src/core/cruise/checkTree";
import { NameList } from "../../../src/core/cruise/nameList";

const rules = {
  plots: new NameList(["1", "2", "North 3"]),
  species: new NameList(["ro", "wo"]),
  leastDbh: inches(1),
  mostDbh: inches(60),
  logsMeasured: true,
};
const sound: TallyLine = { plot: "1", species: "ro", dbh: 14.3, logs: 2.5 };
const check = (change: Partial<TallyLine>, other: Partial<typeof rules> = {}) =>
  checkTree({ ...sound, ...change }, { ...rules, ...other });

describe("a line of the tally", () => {
  it("with nothing wrong gets no word", () => {
    expect(check({})).toBe("");
    expect(check({ plot: "north 3", species: " RO " })).toBe("");
  });

  it("that is blank, or names only its plot, gets no word", () => {
    expect(checkTree({ plot: undefined, species: undefined, dbh: undefined, logs: undefined }, rules)).toBe("");
    expect(checkTree({ plot: "2", species: undefined, dbh: undefined, logs: undefined }, rules)).toBe("");
  });

  it.each<[string, Partial<TallyLine>]>([
    ["DBH is missing, so this tree is not counted.", { dbh: undefined }],
    ["DBH 0.5 in is under your 1 in limit.", { dbh: 0.5 }],
    ["DBH 143 in is over your 60 in limit. Missing a decimal point?", { dbh: 143 }],
    ["DBH 700 in is over your 60 in limit.", { dbh: 700 }],
    ["The plot is missing, so this tree is not counted.", { plot: undefined }],
    ["Plot 15 is not in the plot list.", { plot: "15" }],
    ["The species is missing.", { species: undefined }],
    ['"rp" is not in your species list. Fix the code or add it on Setup. Did you mean ro?', { species: "rp" }],
    ["Logs are missing for a tree of 14.3 in, so it adds no volume.", { logs: undefined }],
    ["Logs should be 0 or more. You have -1.", { logs: -1 }],
    ["4.5 logs look like too many for 14.3 in; printed tables stop at 4.", { logs: 4.5 }],
    ["Logs should go in half steps, such as 2 or 2.5. You have 2.3.", { logs: 2.3 }],
  ])("is told: %s", (sentence, change) => {
    expect(check(change)).toBe(sentence);
  });

  it("needs logs only from sawtimber size on, and only in a tally that has logs", () => {
    expect(check({ dbh: 9, logs: undefined })).toBe("");
    expect(check({ logs: undefined }, { logsMeasured: false })).toBe("");
  });

  it.each([
    [8, 2],
    [10, 3],
    [12, 4],
    [19.9, 4],
    [20, 5],
    [40, 5],
  ])("of %d in may have up to %d logs", (dbh, logs) => {
    expect(check({ dbh, logs })).toBe("");
    expect(check({ dbh, logs: logs + 0.5 })).toContain("too many");
  });
});
