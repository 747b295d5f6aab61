import { zoneAt } from "../../workbook/address";
import { alignmentOf, headed } from "../../workbook/alignment";
import {
  CHECK,
  type EntryRule,
  type PlannedCell,
  type SheetPlan,
  type SpillPlan,
  type TablePlan,
} from "../../workbook/plan";
import { cellStyle } from "../../workbook/styles";
import { tableZone } from "../../workbook/zones";
import { even, filledWith, planned } from "./cellValues";
import { validationOf } from "./entryRules";
import { standOutWhenSaid } from "./standOut";
import { blockRange, breakLines, hasFormula, ROWS_TO_COME, runsOf } from "./layValues";

/** Most cells of a spill's zone that are given a number format ahead; the zone itself is far larger. */
const FORMATTED = 1500;

/** What refers to tables and names, which are there by now, and what only dresses the sheet. */
export function layFormulas(sheet: Excel.Worksheet, plan: SheetPlan): void {
  for (const block of plan.blocks.filter(hasFormula)) {
    blockRange(sheet, block).formulas = even<PlannedCell>(block.cells, null).map((row) => row.map(planned));
  }
  for (const block of plan.blocks.filter(({ style }) => style === "Attention")) {
    standOutWhenSaid(blockRange(sheet, block));
  }
  for (const table of plan.tables) layComputedColumns(sheet, table);
  for (const spill of plan.spills) laySpill(sheet, spill);
  const { right, left, indented } = alignmentOf(plan);
  for (const at of right) sheet.getRange(at).format.horizontalAlignment = "Right";
  for (const at of left) sheet.getRange(at).format.horizontalAlignment = "Left";
  for (const at of indented) sheet.getRange(at).format.indentLevel = 1;
  for (const { at, rule } of plan.entryRules) layRule(sheet.getRange(at), rule);
}

function layComputedColumns(sheet: Excel.Worksheet, table: TablePlan): void {
  const { row, column, rows } = tableZone(table);
  const formulas = table.columns.map(({ formula }) => formula);
  for (const run of runsOf(formulas.map((formula) => formula !== undefined)).filter(({ value }) => value)) {
    const line = formulas.slice(run.from, run.from + run.length).map((formula) => formula ?? "");
    const cells = sheet.getRangeByIndexes(row + 1, column + run.from, rows - 1, run.length);
    cells.formulas = Array.from({ length: rows - 1 }, () => line);
  }
  table.columns.forEach(({ heading, rule }, i) => {
    const cells = () => sheet.getRangeByIndexes(row + 1, column + i, rows - 1 + ROWS_TO_COME, 1);
    if (rule) layRule(cells(), rule);
    if (heading === CHECK) standOutWhenSaid(cells());
  });
}

function laySpill(sheet: Excel.Worksheet, spill: SpillPlan): void {
  const { row, column } = zoneAt(spill.at);
  const { formats, rows, columns } = spill;
  const headings = headed(spill);
  if (headings > 0) {
    const heading = sheet.getRangeByIndexes(row, column, 1, headings);
    heading.style = cellStyle("Heading");
    if (spill.headingLines !== undefined) breakLines(sheet, heading, row, [spill.headingLines]);
  }
  if (formats) {
    const below = headings > 0 ? 1 : 0;
    const deep = Math.min(rows - below, Math.ceil(FORMATTED / formats.length));
    const zone = sheet.getRangeByIndexes(row + below, column, deep, formats.length);
    zone.numberFormat = Array.from({ length: deep }, () => [...formats]);
  }
  for (const [line, format] of Object.entries(spill.rowFormats ?? {})) {
    const cells = sheet.getRangeByIndexes(row + Number(line), column + 1, 1, columns - 1);
    cells.numberFormat = filledWith(1, columns - 1, format);
  }
  sheet.getRange(spill.at).formulas = [[spill.formula]];
}

function layRule(range: Excel.Range, rule: EntryRule): void {
  const validation = validationOf(rule);
  range.dataValidation.rule = validation.rule;
  range.dataValidation.errorAlert = validation.errorAlert;
  range.dataValidation.ignoreBlanks = true;
}
