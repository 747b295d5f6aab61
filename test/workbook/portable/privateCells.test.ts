import { expect, it } from "vitest";
import type { CopiedSheet } from "../../../src/workbook/host";
import { withoutPrivate } from "../../../src/workbook/portable/privateCells";

it("a copy without prices keeps no sentence that tells what something brings, and keeps the words for a unit", () => {
  const cells = [
    [{ value: "6 logs, $173.40; the best habit brings $164.40", format: "General", formula: "=1" }],
    [{ value: 173.4, format: "$#,##0.00" }],
    [{ value: "$ per MBF", format: "General" }],
    [{ value: 6, format: "0" }],
  ];
  const sheet: CopiedSheet = { name: "Bucking", cells, tables: [], names: [] };
  expect(withoutPrivate([sheet])[0]?.cells.map(([cell]) => cell?.value)).toEqual([null, null, "$ per MBF", 6]);
});
