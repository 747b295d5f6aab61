import type { SheetPlan, TableRow } from "../../../src/workbook/plan";

/** The table's rows as they read back: a blank is null, a computed column has its answer. */
export const ROWS: readonly TableRow[] = [
  { Key: "a", Inches: 10.25, Twice: 20.5, Note: null },
  { Key: "b", Inches: 20, Twice: 40, Note: "second" },
];

/** A sheet with one of everything that the port promises. */
export const contractSheets: readonly SheetPlan[] = [
  {
    name: "Contract",
    sheetClass: "foundation",
    widths: [12, 12, 12, 24],
    frozenRows: 5,
    landscape: true,
    print: { area: "A1:G9", titleRows: [5, 5], breaks: [], gridlines: false, margin: 0.5 },
    blocks: [
      { at: "A1", cells: [["Contract"]], style: "Title" },
      { at: "F1", cells: [["text"], ["factor"], ["flag"], ["blank"], ["sum"], ["error"]] },
      { at: "G2", cells: [[1]], style: "Input" },
      { at: "G5", cells: [[{ formula: "=SUM(ContractRows[Inches])" }]], style: "Computed" },
      { at: "G6", cells: [[{ formula: "=1/0" }]] },
    ],
    names: [
      { name: "Contract_Text", at: "G1" },
      { name: "Contract_Factor", at: "G2" },
      { name: "Contract_Flag", at: "G3" },
      { name: "Contract_Blank", at: "G4" },
      { name: "Contract_Sum", at: "G5" },
      { name: "Contract_Error", at: "G6" },
    ],
    tables: [
      {
        name: "ContractRows",
        at: "A5",
        columns: [
          { heading: "Key", width: 8 },
          {
            heading: "Inches",
            width: 10,
            format: "0.00",
            rule: { kind: "number", low: 0, high: 100, strict: true, message: "Inches from 0 to 100." },
          },
          { heading: "Twice", width: 10, formula: "=ContractRows[[#This Row],[Inches]]*2" },
          { heading: "Note", width: 24, format: "@" },
        ],
        rows: [
          { Key: "a", Inches: 10.25 },
          { Key: "b", Inches: 20, Note: "second" },
        ],
      },
    ],
    spills: [{ name: "Contract_Spill", at: "I2", formula: "=SEQUENCE(2,2)/3", rows: 4, columns: 2, headings: 0 }],
    entryRules: [
      { at: "G1", rule: { kind: "list", choices: ["oak", "pine"], strict: true, message: "Oak or pine." } },
      { at: "G2", rule: { kind: "number", low: 0, high: 10, strict: false, message: "Usually 0 to 10." } },
    ],
  },
];
