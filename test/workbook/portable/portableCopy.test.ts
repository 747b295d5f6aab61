import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { HostProblem, type CopiedSheet } from "../../../src/workbook/host";
import { makePortable, planPortable } from "../../../src/workbook/portable/portableCopy";
import { formulasInXlsx, writeXlsxFile } from "../../../src/workbook/portable/xlsxFile";
import { copiedDemo } from "./copiedDemo";

/** The reader makes dates of days; a cell holds their number. */
const numberOfDay = (value: unknown) => (value instanceof Date ? value.getTime() / 86_400_000 + 25_569 : value);

const bytesOf = (base64: string) => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));

describe("a portable copy", () => {
  const copied = copiedDemo();
  const plan = planPortable(copied, false);

  it("holds every value in its cell, and no formula", async () => {
    const file = bytesOf(await makePortable(plan));
    const { sheets } = await readXlsx(file);
    expect(await formulasInXlsx(file)).toEqual([]);
    expect(sheets.map(({ name }) => name)).toEqual([...copied.map(({ name }) => name), "Methods"]);
    for (const [i, { name, cells }] of copied.entries()) {
      cells.forEach((row, r) => {
        row.forEach(({ value }, c) =>
          expect(numberOfDay(sheets[i]?.rows[r]?.[c] ?? null), `${name} ${r},${c}`).toEqual(value),
        );
      });
    }
  });

  it("keeps tables, named cells and number formats", async () => {
    const { sheets, namedRanges } = await readXlsx(bytesOf(await makePortable(plan)), { readStyles: true });
    const trees = sheets.find(({ name }) => name === "Trees");
    expect(trees?.tables?.[0]).toMatchObject({ name: "Trees", range: "A7:W139" });
    const headings = trees?.tables?.[0]?.columns.map(({ name }) => name) ?? [];
    expect(headings).toEqual(trees?.rows[6]?.slice(0, headings.length));
    expect(namedRanges).toContainEqual(
      expect.objectContaining({ name: "Log_Rule", range: expect.stringMatching(/^'?Setup'?!\$B\$\d+$/) as string }),
    );
    expect(trees?.cells?.get("7,2")?.style?.numFmt).toBe("0.0");
  });

  it("tells each formula once on Methods, as text with the cells it stood in", () => {
    const rows = plan.sheets.at(-1)?.cells.map((row) => row.map(({ value }) => value)) ?? [];
    expect(rows).toContainEqual([
      "Trees",
      "M8:M139",
      "Trees, Volume bf",
      "=WOODLOT.TREEVOLUME(Trees[[#This Row],[DBH in]],Trees[[#This Row],[Logs 16 ft]],Log_Rule,Trees[[#This Row],[Form class]],Units)",
    ]);
    expect(rows.filter(([, , what]) => what === "Out_Summary")).toHaveLength(1);
    expect(rows).toContainEqual(["Log rule of standing trees", "International 1/4"]);
    const told = rows.filter(([, , , formula]) => String(formula).startsWith("=")).length;
    const formulas = new Set(
      copied.flatMap(({ name, cells }) => cells.flat().flatMap(({ formula }) => (formula ? [name + formula] : []))),
    );
    expect(told).toBeGreaterThanOrEqual(formulas.size);
  });

  it("counts the add-in's formulas that become values", () => {
    const made = copied.flatMap(({ cells }) => cells.flat()).filter(({ formula }) => formula?.includes("WOODLOT."));
    expect(plan.formulas).toBe(made.length);
    expect(plan.formulas).toBeGreaterThan(132 * 4);
  });

  it("is named after the stand", () => {
    expect(plan.fileName).toBe("Demo woodlot - invented - values only.xlsx");
  });

  it("finds a formula where one was written, so that the proof can fail", async () => {
    const { writeXlsx } = await import("hucre/xlsx");
    const file = await writeXlsx({
      sheets: [
        {
          name: "A",
          rows: [[1]],
          cells: new Map([["0,1", { value: 2, type: "formula", formula: "WOODLOT.LOGSCALE(14,16)" }]]),
        },
      ],
    });
    expect(await formulasInXlsx(file)).toEqual(["WOODLOT.LOGSCALE(14,16)"]);
  });

  it("keeps a text that looks like a formula a text", async () => {
    const text = { value: "=1+1", format: "@" };
    const file = await writeXlsxFile([{ name: "A", cells: [[text]], widths: [10], tables: [], names: [] }]);
    expect(await formulasInXlsx(file)).toEqual([]);
    expect((await readXlsx(file)).sheets[0]?.rows[0]?.[0]).toBe("=1+1");
  });
});

describe("a copy of sheets with errors", () => {
  const sheet = (value: string): CopiedSheet => ({
    name: "Stand",
    cells: [
      [],
      [
        { value: "x", format: "General" },
        { value, format: "General", formula: "=WOODLOT.QMD(A1)" },
      ],
    ],
    tables: [],
  });

  it("is not made until the errors were seen: each is listed with its cell and what it means", async () => {
    const plan = planPortable([sheet("#N/A")], false);
    expect(plan.errors).toEqual([
      { sheet: "Stand", at: "B2", error: "#N/A", says: expect.stringMatching(/not enough data/) as string },
    ]);
    await expect(makePortable(plan)).rejects.toThrow(HostProblem);
    await expect(makePortable(plan)).rejects.toThrow("Stand B2 shows #N/A.");
    expect(await makePortable(plan, true)).not.toBe("");
  });

  it.each(["#VALUE!", "#NAME?", "#SPILL!", "#DIV/0!", "#REF!", "#NUM!", "#BUSY!", "#CALC!"])(
    "knows %s for an error",
    (value) => {
      expect(planPortable([sheet(value)], false).errors).toHaveLength(1);
    },
  );

  it.each(["#1 common", "# of trees", "Rank #1!"])("does not take the text %s for one", (value) => {
    expect(planPortable([sheet(value)], false).errors).toEqual([]);
  });
});

describe("a copy without names, prices and places on the map", () => {
  const plan = planPortable(copiedDemo(), true);
  const texts = plan.sheets.flatMap(({ cells }) => cells.flat()).map(({ value }) => value);

  it("leaves the sheets of prices out, and the stand's name, crew and coordinates", () => {
    expect(plan.sheets.map(({ name }) => name)).not.toEqual(expect.arrayContaining(["Prices"]));
    expect(plan.sheets.map(({ name }) => name)).not.toEqual(expect.arrayContaining(["Compare"]));
    expect(texts).not.toContain("Demo woodlot - invented");
    expect(texts).not.toContain("owner");
    expect(texts).not.toContain(463.4);
    expect(plan.fileName).toBe("Woodlot - values only.xlsx");
  });

  it("leaves out whatever shows dollars", () => {
    const priced = plan.sheets
      .flatMap(({ cells }) => cells.flat())
      .filter(({ value, format }) => typeof value === "number" && format?.includes("$"));
    expect(priced).toEqual([]);
    expect(texts).not.toContain(900);
  });
});
