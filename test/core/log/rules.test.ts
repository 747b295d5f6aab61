import fc from "fast-check";
import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange, Problem } from "../../../src/core/basis/problem";
import { boardFeet } from "../../../src/core/basis/units";
import { logRule } from "../../../src/core/log/findLogRule";
import type { LogRule } from "../../../src/core/log/logRule";
import { logRules, menuRules } from "../../../src/core/log/rules";
import { numberIn } from "../../support/published";
import { log, printedLog } from "./printedLog";
import { printingsOf, toleranceOf } from "./printingsOf";

/** Every rule in the list is held against its own printed tables and against what any rule must do. */
describe.each(logRules)("$title rule", (rule) => {
  it("lies in the file that bears its name and tells where it comes from", () => {
    expect(existsSync(new URL(`../../../src/core/log/rules/${rule.id}.ts`, import.meta.url))).toBe(true);
    expect(rule.sources.length).toBeGreaterThan(0);
  });

  it("says in its title when it is known from memory only, and answers to the bare name all the same", () => {
    const { title, aliases = [], fromMemory = false, inMenus = true } = rule;
    const bare = title.replace(FROM_MEMORY, "");
    expect(bare !== title).toBe(fromMemory);
    if (fromMemory) {
      expect(aliases).toContain(bare);
      expect(rule.sources.map(({ standing }) => standing)).toContain("from memory");
    }
    expect(menuRules.includes(rule)).toBe(inMenus);
  });

  it("is found by its title and its other names, however they are typed", () => {
    for (const name of [rule.title, ...(rule.aliases ?? [])]) {
      expect(logRule(name)).toBe(rule);
      expect(logRule(` ${name.toUpperCase().replaceAll(" ", "-")} `)).toBe(rule);
    }
  });

  describe.each(printingsOf(rule))("against $source ($standing)", (printing) => {
    it.each(printing.rows)("$diameter in x $length ft is $volume bf", (row) => {
      const scaled = rule.scale(printedLog(row));
      expect(Math.abs(scaled - numberIn(row, "volume")), `${scaled} bf`).toBeLessThanOrEqual(
        toleranceOf(row, printing) + 1e-9,
      );
    });
  });

  it("never scales a longer log less", () => {
    fc.assert(
      fc.property(diameters, lengths, lengths, (diameter, one, other) => {
        const [shorter, longer] = [
          valueOf(rule, diameter, Math.min(one, other)),
          valueOf(rule, diameter, Math.max(one, other)),
        ];
        return shorter === undefined || longer === undefined || longer >= shorter - 1e-9;
      }),
    );
  });

  it("never scales a thicker log less", () => {
    fc.assert(
      fc.property(diameters, diameters, lengths, (one, other, length) => {
        if (fallsBetween(rule, Math.min(one, other), Math.max(one, other))) return true;
        const [thinner, thicker] = [
          valueOf(rule, Math.min(one, other), length),
          valueOf(rule, Math.max(one, other), length),
        ];
        return thinner === undefined || thicker === undefined || thicker >= thinner - 1e-9;
      }),
    );
  });

  it("never scales a log of the next whole inch less", () => {
    for (let diameter = 1; diameter < 60; diameter += 1) {
      const [thinner, thicker] = [valueOf(rule, diameter, 12), valueOf(rule, diameter + 1, 12)];
      if (thinner !== undefined && thicker !== undefined) expect(thicker).toBeGreaterThanOrEqual(thinner);
    }
  });

  it("answers any two numbers with board feet of 0 or more, or with a problem that says so", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (diameter, length) => {
        try {
          return rule.scale(log(diameter, length)) >= 0;
        } catch (problem) {
          return problem instanceof Problem && problem.message.endsWith(".");
        }
      }),
    );
  });

  it.each([0, -1, NaN, Infinity])("refuses a measure of %s", (wrong) => {
    expect(() => rule.scale(log(wrong, 16))).toThrow(InvalidInput);
    expect(() => rule.scale(log(14, wrong))).toThrow(InvalidInput);
  });

  it("refuses a measure that no log has, so that no figure runs over", () => {
    expect(() => rule.scale(log(1001, 16))).toThrow("Diameter should be at most 1000 in. You have 1001.");
    expect(() => rule.scale(log(14, 1e300))).toThrow("Length should be at most 1000 ft. You have 1.000e+300.");
  });

  it("rounds without moving a figure that is rounded already, and keeps the order of volumes", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 5000, noNaN: true }),
        (one, other) => {
          const [low, high] = [
            rule.round(boardFeet(Math.min(one, other))),
            rule.round(boardFeet(Math.max(one, other))),
          ];
          return low <= high && rule.round(low) === low && Math.abs(low - Math.min(one, other)) <= 5;
        },
      ),
    );
  });
});

it("has no two rules of one name", () => {
  const names = logRules.flatMap(({ id, title, aliases = [] }) => [id, title, ...aliases]);
  expect(new Set(names).size).toBe(names.length - logRules.filter(({ id, title }) => id === title).length);
});

it("offers one rule from memory in its menus, marked as such, and never first", () => {
  expect(menuRules.filter(({ fromMemory }) => fromMemory).map(({ title }) => title)).toEqual([
    "Scribner (from memory)",
  ]);
  expect(menuRules[0]?.fromMemory).toBeUndefined();
});

it("names every rule when a text means none of them", () => {
  const list = logRules.map(({ title }) => title).join(", ");
  expect(() => logRule("Doile")).toThrow(`Rule should be one of: ${list}. You have "Doile".`);
});

it("fails a printed row that asks for a looser tolerance without a reason", () => {
  const printing = { source: "", url: "", printedTo: 1, standing: "read", notes: [], rows: [] };
  expect(toleranceOf({ volume: "10" }, printing)).toBe(0.5);
  expect(() => toleranceOf({ volume: "10", tolerance: "3" }, printing)).toThrow("reason");
});

const FROM_MEMORY = / \(from memory\)$/;

/** Doyle-Scribner falls where it passes from one rule to the other, by its own words; no other rule may. */
const fallsBetween = ({ id }: LogRule, thinner: number, thicker: number) =>
  id === "doyleScribner" && thinner <= 28 && thicker > 28 && thicker < 28.4;

const diameters = fc.double({ min: 1, max: 60, noNaN: true });
const lengths = fc.double({ min: 1, max: 60, noNaN: true });

function valueOf(rule: LogRule, diameter: number, length: number): number | undefined {
  try {
    return rule.scale(log(diameter, length));
  } catch (problem) {
    if (problem instanceof OutOfRange) return undefined;
    throw problem;
  }
}
