import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import Papa from "papaparse";
import { afterAll, describe, expect, it } from "vitest";
import { makePortable, planPortable } from "../../../src/workbook/portable/portableCopy";
import { copiedDemo } from "./copiedDemo";

/** Comma, quotes, UTF-8, from line 1, values not as shown, every sheet into a file of its own. */
const EVERY_SHEET_AS_CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

const installed = spawnSync("soffice", ["--version"]).status === 0;
if (!installed)
  console.log("Skipped: LibreOffice (soffice) is not installed, so the portable copy was not opened in it.");

describe.skipIf(!installed)("the portable copy in a second spreadsheet", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "portable-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("opens, and shows the same values in the same cells", { timeout: 120_000 }, async () => {
    const copied = copiedDemo();
    const file = path.join(folder, "copy.xlsx");
    writeFileSync(file, Buffer.from(await makePortable(planPortable(copied, false)), "base64"));
    const profile = pathToFileURL(path.join(folder, "profile")).href;
    execFileSync(
      "soffice",
      ["--headless", `-env:UserInstallation=${profile}`, "--convert-to", EVERY_SHEET_AS_CSV, "--outdir", folder, file],
      {
        stdio: "pipe",
        timeout: 110_000,
      },
    );

    expect(readdirSync(folder)).toContain("copy-Methods.csv");
    for (const { name, cells } of copied) {
      const { data } = Papa.parse<string[]>(readFileSync(path.join(folder, `copy-${name}.csv`), "utf8"));
      cells.forEach((row, r) => {
        row.forEach(({ value, format }, c) => {
          const shown = data[r]?.[c] ?? "";
          const where = `${name} row ${r + 1}, column ${c + 1}`;
          if (typeof value === "number" && format !== "yyyy-mm-dd") expect(Number(shown), where).toBeCloseTo(value, 9);
          else if (typeof value !== "number") expect(shown, where).toBe(String(value ?? ""));
        });
      });
    }
  });
});
