import { describe, expect, it } from "vitest";
import { samplingMethods } from "../../src/core/cruise/methods";
import { classRules } from "../../src/core/cruise/classRules";
import { cutSummary } from "../../src/functions/cut";
import { cutByClass, cutBySpecies, CutClassRule, CutPartsSampling } from "../../src/functions/cutParts";
import { ClassRuleName, standTable } from "../../src/functions/classTables";
import { standSummary } from "../../src/functions/standSummary";
import { column, errorOf } from "../support/cells";
import { dbh, plot, plots, volume } from "../support/fourPoints";

const { point } = CutPartsSampling;
const take = column(dbh.map((_, at) => ["Yes", "no", ""][at % 3]));
const species = column(dbh.map((_, at) => ["wo", "ro", "hi", "ro"][at % 4]));
const stand = standSummary(plot, dbh, plots, point as never, [[10]], volume);
const cut = cutSummary(plot, dbh, take, plots, point as never, [[10]], volume);

it("the menus are the lists of the core", () => {
  expect(Object.values(CutPartsSampling)).toEqual(samplingMethods.map(({ title }) => title));
  for (const menu of [CutClassRule, ClassRuleName])
    expect(Object.values(menu)).toEqual(classRules.map(({ title }) => title));
});

describe.each([
  ["CUTBYCLASS", cutByClass(plot, dbh, take, plots, point, [[10]], volume)],
  ["CUTBYSPECIES", cutBySpecies(plot, species, dbh, take, plots, point, [[10]], volume)],
])("%s", (_, table) => {
  const parts = table.slice(1, -1);
  const all = table.at(-1) ?? [];

  it("has before, cut and leave of trees, basal area and volume, which add up in every row and over all of them", () => {
    for (const row of table.slice(1))
      for (const [before, taken, leave] of [
        [1, 3, 4],
        [6, 7, 8],
        [9, 10, 11],
      ] as const)
        expect((row[taken] as number) + (row[leave] as number)).toBeCloseTo(row[before] as number, 9);
    for (const place of [1, 3, 4, 6, 7, 8, 9, 10, 11])
      expect(parts.reduce((sum, row) => sum + (row[place] as number), 0)).toBeCloseTo(all[place] as number, 9);
  });

  it("ends with the stand of STANDSUMMARY, margin and all, and with the cut of CUTSUMMARY", () => {
    expect(all[1]).toBeCloseTo(stand[1]?.[1] as number, 9);
    expect(all[2]).toBeCloseTo(stand[1]?.[2] as number, 9);
    expect(all[6]).toBeCloseTo(stand[2]?.[1] as number, 9);
    for (const [place, of] of [
      [3, 1],
      [7, 2],
      [10, 4],
    ] as const)
      expect(all[place]).toBeCloseTo(cut[2]?.[of] as number, 9);
  });
});

describe("CUTBYCLASS", () => {
  it("has the classes and the trees of STANDTABLE under either rule of classes, which its heading says", () => {
    for (const [rule, says] of [
      ["Middle", "DBH class in; class 12 is 11 to under 13 in"],
      ["Edge", "DBH class in; class 13 is 12 to under 14 in"],
    ] as const) {
      const table = cutByClass(plot, dbh, take, plots, point, [[10]], volume, 2, undefined, 95, rule as CutClassRule);
      const trees = standTable(plot, species, dbh, plots, point as never, [[10]], 2, undefined, rule as never);
      expect(table[0]?.[0]).toBe(says);
      expect(trees[0]?.[0]).toBe(`Trees per ac by ${says}`);
      expect(table.slice(1, -1).map((row) => row[0] as number)).toEqual(
        trees.slice(1, -1).map((row) => row[0] as number),
      );
      for (const [at, row] of table.slice(1).entries()) expect(row[1]).toBeCloseTo(trees[at + 1]?.at(-1) as number, 9);
    }
  });

  it("calls 16.0 to 17.9 in the class 17 by the edge, as Marshall and Iles print it, and 16 and 18 by the middle", () => {
    const one = (rule: string) =>
      standTable([[1], [1]], [["ro"]], [[16], [17.9]], [[1]], "Fixed" as never, [[0.1]], 2, undefined, rule as never)
        .slice(1, -1)
        .map((row) => row[0] as number);
    expect(one("Edge")).toEqual([17]);
    expect(one("Middle")).toEqual([16, 18]);
    expect(errorOf(() => one("Odd"))?.message).toBe('Class rule should be one of: Middle, Edge. You have "Odd".');
  });

  it("has margins that do not apply where every tree was tallied", () => {
    const all = cutByClass([[1], [1]], [[12], [14]], [["Yes"], ["No"]], [[1]], "All" as never, [[2]]);
    expect(all[1]?.[2]).toBe("not applicable");
    expect(all[1]?.[5]).toBe("not applicable");
  });

  it("says that there are no trees yet", () => {
    expect(cutByClass([[""]], [[""]], [[""]], plots, point, [[10]])[1]?.[0]).toBe("No trees yet");
    expect(cutBySpecies([[""]], [[""]], [[""]], [[""]], plots, point, [[10]])[1]?.[0]).toBe("No trees yet");
  });
});
