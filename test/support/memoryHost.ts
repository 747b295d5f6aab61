import {
  HostProblem,
  type CopiedSheet,
  type Place,
  type TableContent,
  type WorkbookHost,
} from "../../src/workbook/host";
import type { CellValue, SheetPlan, TableRow } from "../../src/workbook/plan";
import { zoneAt } from "../../src/workbook/address";

/** What a workbook without an engine holds: tables, named cells, and the sheets they stand on. */
export interface MemoryBook {
  readonly sheets: Set<string>;
  readonly tables: Map<string, { readonly sheet: string; readonly headings: readonly string[]; rows: TableRow[] }>;
  readonly names: Map<string, CellValue>;
}

/** Stands in for the formulas, which memory has no engine for. */
export interface Calculation {
  /** Fills the computed columns of a row. */
  row(table: string, row: TableRow, book: MemoryBook): TableRow;
  /** The spilled answer of a named cell; undefined when the book has no such name. */
  spill(name: string, book: MemoryBook): readonly (readonly CellValue[])[] | undefined;
}

export interface MemoryHost extends WorkbookHost {
  readonly book: MemoryBook;
  /** Every verb that changed something, in order. */
  readonly log: string[];
  readonly selected: Place[];
  /** The area that each sheet prints, where that was changed. */
  readonly printed: Map<string, string>;
  readonly opened: { readonly base64: string; readonly fileName: string }[];
  /** Makes the next writes fail, until they are let through again. */
  refuse(message: string | undefined): void;
  /** Makes every verb wait, as a busy spreadsheet does. [ms] */
  wait: number;
  /** Resolves once no verb has been asked for during a few turns. */
  idle(): Promise<void>;
}

const QUIET_TURNS = 3;

/** The port over plain memory: what is laid and written can be read again, and nothing else is pretended. */
export function memoryHost(calculation: Calculation): MemoryHost {
  const book: MemoryBook = { sheets: new Set(), tables: new Map(), names: new Map() };
  const watchers = new Set<() => void>();
  let refusal: string | undefined;

  const table = (name: string) => {
    const found = book.tables.get(name);
    if (!found)
      throw new HostProblem("missing table", `The table named ${name} is missing. Your data has not been changed.`);
    return found;
  };
  let asked = 0;
  const turn = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
  const settle = () => {
    asked += 1;
    return turn(host.wait);
  };
  const write = async (what: string, change: () => void) => {
    await settle();
    if (refusal !== undefined) throw new HostProblem("busy", refusal);
    change();
    host.log.push(what);
    watchers.forEach((tell) => tell());
  };

  const host: MemoryHost = {
    book,
    log: [],
    selected: [],
    printed: new Map(),
    opened: [],
    wait: 0,
    idle: async () => {
      for (let quiet = 0, seen = asked; quiet < QUIET_TURNS; quiet = asked === seen ? quiet + 1 : 0) {
        seen = asked;
        await turn(host.wait + 1);
      }
    },
    refuse: (message) => {
      refusal = message;
    },

    lay: (sheets) => write(`lay ${sheets.length} sheets`, () => sheets.forEach((sheet) => laySheet(book, sheet))),

    hasTable: async (name) => {
      await settle();
      return book.tables.has(name);
    },

    readTable: async (name): Promise<TableContent> => {
      await settle();
      const { sheet, headings, rows } = table(name);
      return { name, sheet, headings, rows: rows.map((row) => ({ ...row, ...calculation.row(name, row, book) })) };
    },

    appendRows: (name, rows) => write(`append ${name} ${JSON.stringify(rows)}`, () => table(name).rows.push(...rows)),

    updateRow: (name, row, changes) =>
      write(`update ${name} ${row} ${JSON.stringify(changes)}`, () => {
        const { rows } = table(name);
        if (!rows[row]) throw new HostProblem("refused", `Row ${row + 1} of ${name} is not there any more.`);
        rows[row] = { ...rows[row], ...changes };
      }),

    updateRows: (name, all) =>
      write(`update ${name} ${JSON.stringify(all)}`, () => {
        const { rows } = table(name);
        for (const { row, changes } of all) {
          if (!rows[row]) throw new HostProblem("refused", `Row ${row + 1} of ${name} is not there any more.`);
          rows[row] = { ...rows[row], ...changes };
        }
      }),

    deleteRow: (name, row) => write(`delete ${name} ${row}`, () => void table(name).rows.splice(row, 1)),

    readNames: async (names) => {
      await settle();
      const missing = names.find((name) => !book.names.has(name));
      if (missing !== undefined) throw new HostProblem("missing name", `The named cell ${missing} is missing.`);
      return Object.fromEntries(names.map((name) => [name, book.names.get(name) ?? null]));
    },

    writeNames: (values) =>
      write(`names ${JSON.stringify(values)}`, () =>
        Object.entries(values).forEach(([name, value]) => book.names.set(name, value)),
      ),

    readSpill: async (name) => {
      await settle();
      const answer = calculation.spill(name, book);
      if (!answer) throw new HostProblem("missing name", `The named cell ${name} is missing.`);
      return answer;
    },

    watch: (onChange) => {
      watchers.add(onChange);
      return Promise.resolve(() => void watchers.delete(onChange));
    },

    printDownTo: async (sheet, area) => {
      await settle();
      if (book.sheets.has(sheet)) host.printed.set(sheet, area);
    },

    select: async (place) => {
      await settle();
      host.selected.push(place);
    },

    copy: async (): Promise<readonly CopiedSheet[]> => {
      await settle();
      return [...book.sheets].map((name) => copied(book, name));
    },

    openCopy: async (base64, fileName) => {
      await settle();
      host.opened.push({ base64, fileName });
    },
  };
  return host;
}

/** Keeps the values of a plan: its tables, and the named cells whose value is planned. */
function laySheet(book: MemoryBook, sheet: SheetPlan): void {
  book.sheets.add(sheet.name);
  for (const { name, columns, rows } of sheet.tables) {
    book.tables.set(name, { sheet: sheet.name, headings: columns.map(({ heading }) => heading), rows: [...rows] });
  }
  for (const { name, at } of sheet.names) book.names.set(name, plannedValue(sheet, at));
}

/** The value planned for a cell; null where a formula would make it. */
function plannedValue(sheet: SheetPlan, at: string): CellValue {
  const cell = zoneAt(at);
  for (const block of [...sheet.blocks].reverse()) {
    const corner = zoneAt(block.at);
    const planned = block.cells[cell.row - corner.row]?.[cell.column - corner.column];
    if (planned !== undefined) return planned !== null && typeof planned === "object" ? null : planned;
  }
  return null;
}

function copied(book: MemoryBook, name: string): CopiedSheet {
  const tables = [...book.tables].filter(([, { sheet }]) => sheet === name);
  const cells = tables.flatMap(([, { headings, rows }]) => [
    headings.map((value) => ({ value, format: "General" })),
    ...rows.map((row) => headings.map((heading) => ({ value: row[heading] ?? null, format: "General" }))),
  ]);
  return { name, cells, tables: [] };
}
