import { describe, expect, it } from "vitest";
import { cautions } from "../../src/core/reference/cautions";
import { demoWorkbook } from "../../src/demo/demoWorkbook";
import { functionNames } from "../../src/functions/names";
import { meet, zoneAt } from "../../src/workbook/address";
import { emptyWorkbook } from "../../src/workbook/emptyWorkbook";
import type { SheetPlan } from "../../src/workbook/plan";
import { usualSettings } from "../../src/workbook/settings";
import { named, out } from "../../src/workbook/tables";
import { LAST_ROW, zonesOf } from "../../src/workbook/zones";
import { callsIn, cellsIn, columnsIn, formulasOf, namesIn, withoutTexts } from "./formulaParts";

const workbooks: readonly (readonly [string, readonly SheetPlan[]])[] = [
  ["the demo", demoWorkbook()],
  [
    "a cruise of one's own",
    emptyWorkbook({ settings: usualSettings, plots: 8, species: [{ code: "ro", name: "red oak" }] }),
  ],
];

describe.each(workbooks)("the workbook of %s", (_, plans) => {
  const formulas = formulasOf(plans);
  const tables = plans.flatMap((plan) => plan.tables);
  const names = plans.flatMap((plan) =>
    [...plan.names, ...plan.spills].map(({ name, at }) => ({ name, at, sheet: plan.name })),
  );

  it("names sheets, tables and cells once, in names that spreadsheets take", () => {
    const sheets = plans.map(({ name }) => name);
    for (const name of sheets) expect(name).toMatch(/^[^:\\/?*[\]']{1,31}$/);
    const others = [...tables.map(({ name }) => name), ...names.map(({ name }) => name)];
    for (const name of others) {
      expect(name).toMatch(/^[A-Za-z_]\w*$/);
      expect(name, "looks like a cell").not.toMatch(/^[A-Za-z]{1,3}\d+$/);
    }
    expect(new Set(others.map((name) => name.toLowerCase())).size).toBe(others.length);
    expect(new Set(sheets.map((name) => name.toLowerCase())).size).toBe(sheets.length);
  });

  it("has every named cell that the pane asks for", () => {
    expect(names.map(({ name }) => name)).toEqual(
      expect.arrayContaining([...Object.values(named), ...Object.values(out)]),
    );
  });

  it("heads columns once in a table and without marks that a formula could trip over", () => {
    for (const { name, columns } of tables) {
      const headings = columns.map(({ heading }) => heading.toLowerCase());
      expect(new Set(headings).size, name).toBe(headings.length);
      for (const heading of headings) expect(heading).toMatch(/^[\w ]+$/);
    }
  });

  it("fills tables with headings they have and never with computed ones", () => {
    for (const { columns, rows } of tables) {
      const inputs = columns.filter(({ formula }) => formula === undefined).map(({ heading }) => heading);
      for (const row of rows) expect(inputs).toEqual(expect.arrayContaining(Object.keys(row)));
    }
  });

  it("keeps blocks, tables with their room to grow, and spills apart", () => {
    for (const plan of plans) {
      const zones = zonesOf(plan);
      zones.forEach((zone, i) => {
        for (const other of zones.slice(i + 1))
          expect(meet(zone, other), `${plan.name}: ${zone.what} and ${other.what}`).toBe(false);
      });
    }
  });

  it("stays within the rows and columns that a new sheet has", () => {
    for (const plan of plans) {
      for (const { what, row, column, rows, columns } of zonesOf(plan)) {
        expect(row, `${plan.name}: ${what}`).toBeGreaterThanOrEqual(0);
        expect(row + rows, `${plan.name}: ${what}`).toBeLessThanOrEqual(LAST_ROW);
        expect(column + columns, `${plan.name}: ${what}`).toBeLessThanOrEqual(52);
      }
    }
    for (const formula of formulas) {
      for (const [, address] of cellsIn(formula)) {
        const { row, rows, column, columns } = zoneAt(address);
        expect(row + rows, formula.where).toBeLessThanOrEqual(LAST_ROW);
        expect(column + columns, formula.where).toBeLessThanOrEqual(52);
      }
    }
  });

  it("calls only functions that there are", () => {
    for (const { formula, where } of formulas) {
      for (const name of callsIn(formula)) expect(functionNames, where).toContain(name);
    }
  });

  it("refers only to tables, columns, sheets and names that there are", () => {
    const known = new Set(names.map(({ name }) => name));
    for (const one of formulas) {
      for (const [table, heading] of columnsIn(one.formula)) {
        const headings = tables.find(({ name }) => name === table)?.columns.map((column) => column.heading);
        expect(headings, `${one.where}: ${table}`).toContain(heading);
      }
      for (const name of namesIn(one.formula)) expect(known, `${one.where}: ${name}`).toContain(name);
      for (const [sheet] of cellsIn(one)) expect(plans.map(({ name }) => name)).toContain(sheet);
    }
  });

  it("writes formulas that every engine reads: no short @, no spill mark, balanced", () => {
    for (const { formula, where } of formulas) {
      const bare = withoutTexts(formula);
      expect(bare, where).toMatch(/^=/);
      expect(bare, where).not.toContain("@");
      expect(formula.replaceAll("[#This Row]", ""), where).not.toContain("#");
      expect(bare.split("(").length, where).toBe(bare.split(")").length);
    }
  });

  it("has numbers in computed columns only where they are counts, percents or places, never an assumption", () => {
    for (const { columns } of tables) {
      for (const { formula = "", heading } of columns) {
        const bare = withoutTexts(formula)
          .replace(/\$?[A-Z]+\$?\d+/g, "")
          .replace(/\[[^\]]*\]/g, "");
        for (const [digits] of bare.matchAll(/(?<![\w.])\d+(\.\d+)?/g))
          expect(["0", "1", "2", "4", "5", "100"], heading).toContain(digits);
      }
    }
  });

  it("lists choices that fit a cell's rule, and lists of cells that are there", () => {
    for (const plan of plans) {
      const rules = [
        ...plan.entryRules.map(({ rule }) => rule),
        ...plan.tables.flatMap(({ columns }) => columns.flatMap(({ rule }) => rule ?? [])),
      ];
      for (const rule of rules) {
        if (rule.kind === "list") expect(rule.choices.join(",").length).toBeLessThan(255);
        if (rule.kind === "list") for (const choice of rule.choices) expect(choice).not.toContain(",");
        if (rule.kind === "listOf") {
          const [sheet = "", address = ""] = rule.range.split("!");
          const place = zoneAt(address);
          const source = plans
            .find(({ name }) => name === sheet)
            ?.tables.find(({ at }) => meet({ ...zoneAt(at), rows: 2 }, place));
          expect(zoneAt(source?.at ?? "A1").row, rule.range).toBe(place.row - 1);
          expect(zoneAt(source?.at ?? "A1").column, rule.range).toBe(place.column);
        }
      }
    }
  });

  it("takes every list of boards to a plan from the thickness at the saw on, which the target thickness feeds", () => {
    const lists = formulas.flatMap(({ formula }) => formula.match(/(?:BoardSizes|MoreProducts)\[\[[^)]*?\]\]/g) ?? []);
    expect(lists.length).toBeGreaterThan(5);
    for (const list of lists.filter((one) => !one.includes("#This Row")))
      expect(list).toMatch(/\[\[Thickness in\]:\[Price per MBF\]\]$/);
    for (const name of ["BoardSizes", "MoreProducts"]) {
      const columns = tables.find((table) => table.name === name)?.columns ?? [];
      const thickness = columns.find(({ heading }) => heading === "Thickness in");
      expect(thickness?.formula).toContain(
        `TARGETTHICKNESS(${name}[[#This Row],[Finished thickness in]],Shrinkage_Pct,Planing_Allowance,Saw_Variation,Units)`,
      );
    }
  });

  it("says a caution in words on every sheet that shows an estimate", () => {
    const lines = cautions.map(({ line }) => line);
    for (const name of [
      "Start",
      "Stand",
      "Stand table",
      "Stock table",
      "Products",
      "Logs",
      "Rules",
      "Working",
      "Boards",
      "Mill",
      "Sawing",
      "Bucking",
      "Local volume",
      "Compare",
      "Prices",
    ]) {
      const texts = plans.find((plan) => plan.name === name)?.blocks.flatMap(({ cells }) => cells.flat());
      expect(texts?.filter((text) => lines.includes(text as string)).length, name).toBeGreaterThan(0);
    }
  });
});
