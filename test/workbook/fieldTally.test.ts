import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { readXlsx } from "hucre/xlsx";
import Papa from "papaparse";
import { afterAll, describe, expect, it } from "vitest";
import { demoContent, demoWorkbook } from "../../src/demo/demoWorkbook";

import { TapeTo, limitingDistance } from "../../src/functions/inOrOut";
import { fieldTallyFile } from "../../src/workbook/portable/fieldTallyFile";
import { planFile } from "../../src/workbook/portable/planFile";
import { FIELD_TALLY, fieldTallySheet, type FieldTallyContent } from "../../src/workbook/sheets/fieldTally";
import { LIMIT_DIAMETERS, LIMIT_SLOPES } from "../../src/workbook/sheets/fieldTallyLimits";
import { formulasOf } from "./formulaParts";

const inOneCell = (cells: unknown[][]) => Number(cells[0]?.[0]);

const content = (method: string, size: number): FieldTallyContent & Required<Pick<FieldTallyContent, "alone">> => ({
  points: 5,
  species: [
    { code: "ro", name: "red oak" },
    { code: "wo", name: "white oak" },
  ],
  alone: { stand: "North stand", method, size, points: [1, 2, 3, 4, "5a"] },
});

describe("the field tally", () => {
  const plan = demoWorkbook().find(({ name }) => name === FIELD_TALLY);

  it("has no formula of the add-in in it, in the workbook and alone", () => {
    for (const sheet of [plan, fieldTallySheet(content("Point", 20))]) {
      const formulas = formulasOf(sheet ? [sheet] : []);
      expect(formulas.length).toBeGreaterThan(40);
      for (const { formula } of formulas) expect(formula).not.toMatch(/WOODLOT/i);
    }
  });

  it("has a page for two points, under rows that every page repeats, high enough for cold hands", () => {
    const sheet = fieldTallySheet(content("Point", 20));
    expect(sheet.print?.breaks).toHaveLength(2);
    expect(demoContent.plots.length).toBe(14);
    expect(plan?.print?.breaks).toHaveLength(6);
    const rows = sheet.blocks.filter(({ style, cells }) => style === "Input" && cells.length > 2);
    expect(rows).toHaveLength(6);
    const scale = (sheet.print?.scale ?? 0) / 100;
    // 0.28 in is 20.2 points; a line is 16 points high
    for (const { lines = [] } of rows) for (const line of lines) expect(line * 16 * scale).toBeGreaterThanOrEqual(20.2);
  });

  it("fits the width of a letter page and of A4 between its margins, and the height of a letter page", () => {
    const sheet = fieldTallySheet(content("Point", 20));
    const pixels = sheet.widths.reduce((sum, width) => sum + 7 * width + 5, 0);
    const { scale = 0, margin = 0 } = sheet.print ?? {};
    expect((pixels / 96) * (scale / 100) + 2 * margin).toBeLessThanOrEqual(8.27);
    const [, last] = sheet.print?.titleRows ?? [0, 0];
    const block = (sheet.print?.breaks[1] ?? 0) - (sheet.print?.breaks[0] ?? 0);
    const points = (last * 15.5 + 2 * 16 + (block - 3) * 24 + 16) * (scale / 100);
    expect(points / 72 + 0.5 + 0.75).toBeLessThanOrEqual(11);
  });
});

const installed = spawnSync("soffice", ["--version"]).status === 0;
if (!installed)
  console.log("Skipped: LibreOffice (soffice) is not installed, so the field tally was not calculated in it.");

describe.skipIf(!installed)("the field tally as a workbook of its own, calculated by another spreadsheet", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "field-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const calculated = async (method: string, size: number): Promise<string[][]> => {
    // Without the values that we know beforehand, so that the other spreadsheet has to work them out.
    const sheet = fieldTallySheet(content(method, size));
    const bare = {
      ...sheet,
      blocks: sheet.blocks.map((block) => ({
        ...block,
        cells: block.cells.map((row) =>
          row.map((cell) => (typeof cell === "object" && cell !== null ? { formula: cell.formula } : cell)),
        ),
      })),
    };
    const file = path.join(folder, `${method}-${size}.xlsx`);
    writeFileSync(file, await planFile(bare));
    const profile = pathToFileURL(path.join(folder, "profile")).href;
    const filter = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false";
    execFileSync(
      "soffice",
      ["--headless", `-env:UserInstallation=${profile}`, "--convert-to", filter, "--outdir", folder, file],
      {
        stdio: "pipe",
        timeout: 110_000,
      },
    );
    return Papa.parse<string[]>(readFileSync(file.replace(/xlsx$/, "csv"), "utf8")).data;
  };
  const lineOf = (rows: readonly string[][], label: string) => rows.find(([first]) => first === label)?.slice(1, 13);

  it.each([5, 10, 20, 40])(
    "has LIMITINGDISTANCE to the center and to the face at BAF %d",
    { timeout: 120_000 },
    async (baf) => {
      const rows = await calculated("Point", baf);
      expect(lineOf(rows, "DBH in")).toEqual(LIMIT_DIAMETERS.map(String));
      for (const [label, measureTo] of [
        ["Center", TapeTo.Center],
        ["Face", TapeTo.Face],
      ] as const) {
        const ours = LIMIT_DIAMETERS.map((dbh) => inOneCell(limitingDistance([[dbh]], [[baf]], measureTo)));
        lineOf(rows, label)?.forEach((shown, at) => expect(Number(shown), label).toBeCloseTo(ours[at] ?? NaN, 9));
      }
      LIMIT_SLOPES.forEach((slope, at) => {
        const along = inOneCell(limitingDistance([[12]], [[baf]], TapeTo.Center, [[slope]]));
        const level = inOneCell(limitingDistance([[12]], [[baf]], TapeTo.Center));
        expect(Number(lineOf(rows, "Times")?.[at])).toBeCloseTo(along / level, 9);
      });
    },
  );

  it("has no limits but the radius on fixed plots: 37.2 ft on a tenth of an acre", { timeout: 120_000 }, async () => {
    const rows = await calculated("Fixed", 0.1);
    expect(lineOf(rows, "Center")?.every((cell) => cell === "")).toBe(true);
    expect(rows.flat()).toContain("Plot radius 37.2 ft, level. A tree is in when its center is.");
  });

  it("prints a page for two points, three for five", { timeout: 120_000 }, async () => {
    const file = path.join(folder, "pages.xlsx");
    writeFileSync(file, await planFile(fieldTallySheet(content("Point", 10))));
    const profile = pathToFileURL(path.join(folder, "profile")).href;
    execFileSync(
      "soffice",
      ["--headless", `-env:UserInstallation=${profile}`, "--convert-to", "pdf", "--outdir", folder, file],
      {
        stdio: "pipe",
        timeout: 110_000,
      },
    );
    const pages = readFileSync(file.replace(/xlsx$/, "pdf"), "latin1").match(/\/Type\s*\/Page[^s]/g);
    expect(pages).toHaveLength(3);
  });

  it("shows the same before anything has calculated it, has menus and pages, and no formula of ours", async () => {
    const { base64, fileName } = await fieldTallyFile(content("Point", 20));
    expect(fileName).toBe("North stand - field tally.xlsx");
    const [sheet] = (await readXlsx(Buffer.from(base64, "base64"))).sheets;
    const formulas = [...(sheet?.cells?.values() ?? [])].filter(({ formula }) => formula);
    expect(formulas.length).toBeGreaterThan(40);
    for (const { formula } of formulas) expect(formula).not.toMatch(/WOODLOT/i);
    expect(sheet?.rows[7]?.slice(0, 3)).toEqual(["Center", expect.closeTo(15.556, 3), expect.closeTo(19.445, 3)]);
    expect(sheet?.dataValidations?.find(({ type }) => type === "list")?.values).toEqual(["ro", "wo"]);
    expect(sheet?.rowBreaks).toHaveLength(2);
    expect(sheet?.pageSetup?.printTitlesRow).toBe("$1:$14");
  });
});
