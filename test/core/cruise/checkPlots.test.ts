import { describe, expect, it } from "vitest";
import { checkPlots, type ListedPlot, type PlotTree } from "../../../src/core/cruise/checkPlots";

const plot = (name: string, visited?: boolean, empty = false): ListedPlot => ({ name, visited, empty });
const trees = (on: string, ...diameters: readonly number[]): readonly PlotTree[] =>
  diameters.map((dbh) => ({ plot: on, species: "ro", dbh, logs: 2 }));

describe("the list of plots", () => {
  it("of a fresh cruise has no mistakes: no plot was to be visited yet", () => {
    expect(checkPlots([plot("1"), plot("2"), plot("3")], [])).toEqual(["", "", ""]);
  });

  it("asks about a plot that was passed over, once a later one is done", () => {
    expect(
      checkPlots([plot("1", true), plot("2"), plot("3"), plot("4")], [...trees("1", 12), ...trees("3", 14)]),
    ).toEqual(["", "No trees and not marked: is it empty, or not visited yet?", "", ""]);
    expect(checkPlots([plot("1"), plot("2", true, true)], [])[0]).toContain("not visited yet?");
    expect(checkPlots([plot("1"), plot("2", false)], [])[0]).toContain("not visited yet?");
    expect(checkPlots([plot("1", false), plot("2", true, true)], [])[0]).toBe("");
  });

  it.each<[string, ListedPlot, readonly PlotTree[], string]>([
    ["visited and without trees", plot("1", true), [], "No trees tallied: put Yes under Trees none if it is empty."],
    [
      "empty and with trees",
      plot("1", true, true),
      trees("1", 12),
      "Marked as having no trees, but trees are tallied on it.",
    ],
    ["empty and marked", plot("1", true, true), [], ""],
    ["visited with trees", plot("1", true), trees(" 1 ", 12), ""],
  ])("knows a plot that is %s", (_, one, tally, said) => {
    expect(checkPlots([one], tally)).toEqual([said]);
  });

  it("finds a plot that is listed twice, and passes over blank lines", () => {
    const twice = "This plot is listed twice.";
    const blank = { name: undefined, visited: undefined, empty: false };
    expect(checkPlots([plot("N1", true, true), blank, plot("n1", true, true)], [])).toEqual([twice, "", twice]);
  });

  it("finds a plot that was entered under two numbers, in whatever order its trees are", () => {
    const tally = [...trees("1", 12, 14, 16), ...trees("2", 12, 14, 16.1), ...trees("3", 16, 12, 14)];
    expect(checkPlots([plot("1"), plot("2"), plot("3")], tally)).toEqual([
      "",
      "",
      "Its 3 trees are the same as those of plot 1. Was one plot entered under two numbers?",
    ]);
  });

  it("takes one big tree tallied from two points, or two plots of a pair of trees, for no mistake", () => {
    const tally = [...trees("1", 39, 14, 12), ...trees("2", 39, 15, 11), ...trees("3", 12, 14), ...trees("4", 12, 14)];
    expect(
      checkPlots(
        ["1", "2", "3", "4"].map((name) => plot(name)),
        tally,
      ).join(""),
    ).toBe("");
  });

  it("finds a plot of which every tree was entered twice", () => {
    const said = "Every tree of this plot is there twice. Was it entered twice?";
    expect(checkPlots([plot("1")], trees("1", 12, 14, 16, 12, 14, 16))).toEqual([said]);
    expect(checkPlots([plot("1")], trees("1", 12, 12, 16, 16))).toEqual([""]);
    expect(checkPlots([plot("1")], trees("1", 12, 14, 16, 12, 14))).toEqual([""]);
  });
});
