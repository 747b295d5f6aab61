import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { zoneAt } from "../../src/workbook/address";
import { writeXlsxFile } from "../../src/workbook/portable/xlsxFile";
import { sawingArea, sawingSheet } from "../../src/workbook/sheets/sawing";

const installed = spawnSync("soffice", ["--version"]).status === 0;
if (!installed) console.log("Skipped: LibreOffice (soffice) is not installed, so the sheet Sawing was not printed.");

describe.skipIf(!installed)("the sheet Sawing on paper", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "sawing-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** Excel prints the blank rows of an area too, LibreOffice does not: so a dot stands in its last cell. */
  async function pagesOf(area: string): Promise<number> {
    const { name, widths, landscape, print } = sawingSheet(demoContent);
    const { rows, columns } = zoneAt(area);
    const cells = Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (__, c) => ({
        value: r === rows - 1 && c === columns - 1 ? "." : r === 0 && c === 0 ? "Sawing" : null,
        format: "General",
      })),
    );
    const page = { landscape, area, ...(print && { titleRows: print.titleRows }) };
    const file = path.join(folder, `${rows}.xlsx`);
    writeFileSync(file, await writeXlsxFile([{ name, cells, widths, tables: [], names: [], page }]));
    const profile = pathToFileURL(path.join(folder, "profile")).href;
    execFileSync(
      "soffice",
      ["--headless", `-env:UserInstallation=${profile}`, "--convert-to", "pdf", "--outdir", folder, file],
      { stdio: "pipe", timeout: 110_000 },
    );
    return readFileSync(file.replace(/xlsx$/, "pdf"), "latin1").match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
  }

  it("has one page for a short cut list, and a second one only for a long one", { timeout: 240_000 }, async () => {
    expect(await pagesOf(sawingArea(19))).toBe(1); // the demo's log 1: 18 steps
    expect(await pagesOf(sawingArea(50))).toBe(2);
    expect(await pagesOf(sawingSheet(demoContent).print?.area ?? "")).toBe(2); // until the length is known
  });
});
