import { describe, expect, it } from "vitest";
import { smallEndRules } from "../../src/core/log/findLogRule";
import { checkTrees } from "../../src/functions/checks";
import { SamplingMethodName, StandUnits, treesPerAcre } from "../../src/functions/stand";
import { logTaper } from "../../src/functions/logMeasures";
import { rulePrice } from "../../src/functions/scaleSheets";
import { sawYield } from "../../src/functions/sawing";
import { defectPercent } from "../../src/functions/scaling";
import { stemDiameter } from "../../src/functions/taper";
import { treeLogs, treeVolume } from "../../src/functions/tree";
import { treeValue } from "../../src/functions/treeMeasures";
import { errorOf } from "../support/cells";

const cell = (value: unknown) => [[value]];
const any = (value: unknown) => value as never;
const none = null as never;
const metric = any("metric");
const said = (message: string) => expect.objectContaining({ message }) as unknown;

describe("whoever measures in centimetres and metres", () => {
  it("is answered in them where a log or a stem is refused", () => {
    expect(logTaper(cell(40), cell(30), cell(5), metric)).toEqual([
      [said("Large end should be at least as thick as the small end, 40 cm. You have 30 cm. Ends swapped?")],
    ]);
    expect(defectPercent(any("Interior"), cell(2.54), cell(5), cell(1), cell(1), cell(1), metric)).toEqual([
      [said("Interior as published has no value for a log of 2.54 cm.")],
    ]);
    expect(rulePrice(cell(500), cell(10.16), cell(5), cell("International 1/4"), cell("Doyle"), metric)).toEqual([
      [said("By Doyle a log of 10.16 cm x 5 m scales 0 bf, so no price by it brings the same money.")],
    ]);
    expect(stemDiameter(cell("white oak"), cell(50), cell(20), cell(30), none, none, none, metric)[0]?.[0]).toEqual(
      said("At height should be between 0.03048 and 20 m. You have 30."),
    );
  });

  it("is answered in them where a tree lies outside the tables", () => {
    expect(treeVolume(cell(20), cell(1), any("Doyle"), none, metric)).toEqual([
      [said("The form-class table as published has no value below 25.4 cm DBH. You have 20.")],
    ]);
    expect(errorOf(() => treeLogs(cell(25.4), cell(3.5), none, metric))?.message).toMatch(
      / cm DBH\. .* at 25\.4 cm\.$/,
    );
  });

  it("is answered in them where a log is not sawn", () => {
    const boards = [[2.5, 20]];
    const swapped = () => sawYield(cell(40), cell(30), cell(5), boards, 0.3, any("Live"), none, none, none, metric);
    expect(errorOf(swapped)?.message).toBe(
      "The large end should be at least as thick as the small end. You have 30 and 40 cm. Ends swapped?",
    );
  });
});

describe("plain words for slips", () => {
  it("TREESPERACRE asks for the size that is missing", () => {
    const [point, fixed] = [SamplingMethodName.point, SamplingMethodName.fixed];
    expect(treesPerAcre(cell(14), point, cell(""))).toEqual([
      [said("Basal area factor needs a number in ft2/ac, but the cell is blank.")],
    ]);
    expect(treesPerAcre(cell(30), fixed, cell(null), StandUnits.metric)).toEqual([
      [said("Plot size needs a number in ha, but the cell is blank.")],
    ]);
    expect(treesPerAcre(cell(""), point, cell(""))).toEqual([[""]]);
  });

  it("TREEVALUE asks about a share typed for a percent", () => {
    expect(treeValue(cell(174), cell(400), cell(0.05))).toEqual([
      [said("Cull is 0.05: 0.05 %, or 5 %? Type 5 for 5 %, or leave it out for none.")],
    ]);
    expect(treeValue(cell(174), cell(400), cell(0))).toEqual([[69.6]]);
    expect(treeValue(cell(174), cell(400), cell(5))[0]?.[0]).toBeCloseTo(66.12, 9);
  });

  it("CHECKTREES takes limits that the tables of the stand take too", () => {
    const check = (least: unknown, largest: unknown) =>
      checkTrees(
        cell(1),
        cell("ro"),
        cell(14),
        cell(2),
        cell(1),
        cell("ro"),
        any(least),
        any(largest),
      )[0]?.[0] as unknown;
    expect(check(1, 80)).toBe("");
    expect(check(1, 100)).toBe("Largest DBH should be between 1 and 80 in. You have 100. Missing a decimal point?");
    expect(check(0.5, 60)).toBe("Least DBH should be between 1 and 80 in. You have 0.5.");
    expect(check(40, 20)).toBe("Least DBH should be at most the largest one, 20 in. You have 40.");
    expect(check("", 0)).toBe("");
  });

  it("TREEVOLUME offers only rules that a standing tree can be measured by", () => {
    const message = errorOf(() => treeVolume(cell(20), cell(1), any("Dole")))?.message;
    expect(message).toBe(
      `Rule should be one of: ${smallEndRules.map(({ title }) => title).join(", ")}. You have "Dole".`,
    );
    expect(message).not.toContain("middle");
  });
});
