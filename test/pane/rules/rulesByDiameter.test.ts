import { describe, expect, it } from "vitest";
import { looksOf, ruleFinding } from "../../../src/pane/charts/ruleChart";
import { diameters, rulesByDiameter, widestGap } from "../../../src/pane/rules/rulesByDiameter";
import { demoContent } from "../../../src/demo/demoWorkbook";
import { logRule } from "../../../src/core/log/findLogRule";
import { firstRules } from "../../../src/pane/rules/rulesState";
import { usualSettings } from "../../../src/workbook/settings";
import { allRules } from "../../../src/core/log/ruleSelections";

describe("the rules side by side", () => {
  // Plain arithmetic: Doyle is (D - 4)^2 for 16 ft, so 16 bf at 8 in and 676 at 30 in.
  it("give Doyle's squares at 16 ft", () => {
    const [doyle] = rulesByDiameter(16, ["doyle"]);
    expect(doyle?.volumes).toEqual(diameters.map((diameter) => (diameter - 4) ** 2));
  });

  it("stand in the order of the menus, only those that are ticked, with one value for each diameter", () => {
    const lines = rulesByDiameter(16, [...firstRules.shown].reverse());
    expect(lines.map(({ id }) => id)).toEqual(firstRules.shown);
    for (const { volumes } of lines) expect(volumes).toHaveLength(diameters.length);
    expect(rulesByDiameter(16, [])).toEqual([]);
  });

  it("are those that were read, to begin with; nothing from memory is drawn or scaled by unless it is asked for", () => {
    const marked = allRules.rules.filter(({ fromMemory = false }) => fromMemory).map(({ id }) => id);
    expect(marked.filter((id) => firstRules.shown.includes(id))).toEqual([]);
    for (const { rule, scale } of [usualSettings, demoContent.settings])
      for (const title of [rule, scale.rule]) expect(logRule(title).fromMemory, title).toBeUndefined();
  });

  it("have no value where a table does not reach, instead of a made-up one", () => {
    const [table] = rulesByDiameter(32, ["scribnerDecimalC"]);
    expect(new Set(table?.volumes)).toEqual(new Set([null]));
  });

  it("part most where most over least is largest", () => {
    const lines = [
      { id: "a", title: "A", place: 0, volumes: diameters.map(() => 100) },
      { id: "b", title: "B", place: 1, volumes: diameters.map((diameter) => (diameter === 12 ? 150 : 110)) },
    ];
    expect(widestGap(lines)).toEqual({
      diameter: 12,
      least: { title: "A", volume: 100 },
      most: { title: "B", volume: 150 },
      times: 1.5,
    });
    expect(ruleFinding({ lines, length: 16 })).toBe(
      "At 12 in by 16 ft the rules part most: 100 bf by A, 150 by B, 50 % more",
    );
  });

  it("say so in their names when they are known from memory", () => {
    for (const { title, fromMemory = false } of allRules.rules) expect(title.includes("from memory")).toBe(fromMemory);
  });

  it("look different from each other", () => {
    const looks = allRules.rules.map((_, place) => JSON.stringify(looksOf(place)));
    expect(new Set(looks).size).toBe(looks.length);
  });
});
