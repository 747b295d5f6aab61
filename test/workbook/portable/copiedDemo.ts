import { demoWorkbook } from "../../../src/demo/demoWorkbook";
import { addressOf, zoneAt } from "../../../src/workbook/address";
import type { CopiedCell, CopiedSheet } from "../../../src/workbook/host";
import type { PlannedCell, SheetPlan } from "../../../src/workbook/plan";
import { tableZone } from "../../../src/workbook/zones";

/** The demo as a host would copy it, with made-up numbers where a formula stands: what counts is that they come through. */
export const copiedDemo = (): CopiedSheet[] => demoWorkbook().map(copied);

function copied(plan: SheetPlan): CopiedSheet {
  const cells: CopiedCell[][] = [];
  const put = (row: number, column: number, cell: CopiedCell) => {
    while (cells.length <= row) cells.push([]);
    const line = cells[row] as CopiedCell[];
    while (line.length <= column) line.push({ value: null, format: "General" });
    line[column] = cell;
  };
  for (const { at, cells: block, format = "General" } of plan.blocks) {
    const { row, column } = zoneAt(at);
    block.forEach((line, r) =>
      line.forEach((cell, c) => put(row + r, column + c, cellOf(cell, format, row + r + (column + c) / 8))),
    );
  }
  for (const table of plan.tables) {
    const { row, column } = zoneAt(table.at);
    table.columns.forEach(({ heading, formula, format = "General" }, c) => {
      put(row, column + c, { value: heading, format: "General" });
      table.rows.forEach((line, r) => {
        const cell = formula === undefined ? (line[heading] ?? null) : { formula };
        put(row + 1 + r, column + c, cellOf(cell, format, r + 0.5));
      });
    });
  }
  for (const { at, formula, formats, rows } of plan.spills) {
    const { row, column } = zoneAt(at);
    put(row, column, { ...cellOf({ formula }, "General", row + 0.25), value: rows > 1 ? "Heading" : row + 0.25 });
    if (rows > 1) put(row + 1, column + 1, { value: column + 0.125, format: formats?.[1] ?? "General" });
  }
  return {
    name: plan.name,
    cells,
    tables: plan.tables.map((table) => ({ name: table.name, address: addressOf(tableZone(table)) })),
    names: [...plan.names, ...plan.spills].map(({ name, at }) => ({ name, at })),
  };
}

const cellOf = (cell: PlannedCell, format: string, number: number): CopiedCell =>
  typeof cell === "object" && cell !== null
    ? { value: number, format, formula: cell.formula }
    : { value: cell, format };
