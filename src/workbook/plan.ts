/** What a cell holds; null is a blank. */
export type CellValue = string | number | boolean | null;

/** A formula, written in full with its equals sign. */
export interface Formula {
  readonly formula: string;
  /** What it comes to, where that is known beforehand: a file that no spreadsheet has calculated yet shows it. */
  readonly result?: CellValue;
}

export type PlannedCell = CellValue | Formula;

/** The named styles of the workbook; the user may restyle them. What they look like stands in workbook/styles.ts. */
export type StyleName = "Title" | "Heading" | "Input" | "Computed" | "Linked" | "Note" | "Attention" | "Unit";

/** A block of cells laid from its top left corner. */
export interface BlockPlan {
  /** Top left cell, such as "A4". */
  readonly at: string;
  readonly cells: readonly (readonly PlannedCell[])[];
  readonly style?: StyleName;
  /** Number format of every cell of the block. */
  readonly format?: string;
  /** True where numbers are names, such as those of logs: they begin at the edge of their column, as texts do. */
  readonly names?: boolean;
  /** Lines that each row has room for; long texts are then broken at the width of their column. */
  readonly lines?: readonly number[];
}

/** A cell that formulas and the pane know by name. */
export interface NamePlan {
  readonly name: string;
  readonly at: string;
}

/** What a cell accepts. Field data may be odd: only "stop" refuses, "warning" asks. */
export type EntryRule =
  | { readonly kind: "list"; readonly choices: readonly string[]; readonly strict: boolean; readonly message: string }
  | { readonly kind: "listOf"; readonly range: string; readonly strict: boolean; readonly message: string }
  | {
      readonly kind: "number";
      readonly low: number;
      readonly high: number;
      readonly strict: boolean;
      readonly message: string;
    };

/** Heading of the column in which each row of a table says what is odd about it; blank while nothing is. */
export const CHECK = "Check";

export interface ColumnPlan {
  /** Unique in its table, with its unit and without parentheses: "DBH in". */
  readonly heading: string;
  /** Present for a computed column: one formula for every row, with [#This Row] references. */
  readonly formula?: string;
  readonly format?: string;
  /** Width in characters. */
  readonly width: number;
  readonly rule?: EntryRule;
}

/** A row of a table by heading; headings left out are blank, computed columns are filled by the host. */
export type TableRow = Readonly<Record<string, CellValue>>;

export interface TablePlan {
  readonly name: string;
  readonly at: string;
  readonly columns: readonly ColumnPlan[];
  readonly rows: readonly TableRow[];
}

/** One formula whose answer spills over a zone that is kept free for it, below and to the right. */
export interface SpillPlan {
  /** Defined name of the cell that holds the formula. */
  readonly name: string;
  readonly at: string;
  readonly formula: string;
  readonly rows: number;
  readonly columns: number;
  /** How many cells of the first row are headings of the answer; left out, all columns of an answer of several rows. */
  readonly headings?: number;
  /** Lines that the first row has room for, where the answer's headings are longer than its columns are wide. */
  readonly headingLines?: number;
  /** Number format by column of the zone, first column first. */
  readonly formats?: readonly string[];
  /** Number format of a whole row of the answer but its first cell, where it differs; rows are counted from its heading. */
  readonly rowFormats?: Readonly<Record<number, string>>;
}

export interface EntryRulePlan {
  /** Cell or range. */
  readonly at: string;
  readonly rule: EntryRule;
}

/** A sheet made for paper. */
export interface PrintPlan {
  /** All that is printed, such as "A1:M79": a text that runs over its edge makes no page of its own. */
  readonly area: string;
  /** Rows, counted from 1, that every page repeats on top. */
  readonly titleRows: readonly [first: number, last: number];
  /** Rows, counted from 1, with which a new page begins. */
  readonly breaks: readonly number[];
  /** Lines between the cells, to write in. */
  readonly gridlines: boolean;
  /** On every side. [in] */
  readonly margin: number;
  /**
   * Of the size on the screen; left out, pages are made one page wide. A page that is fitted to its width by itself
   * would lose its breaks. [%]
   */
  readonly scale?: number;
}

export type SheetClass = "control" | "foundation" | "presentation";

/** A sheet as plain data: it can be tested without any spreadsheet, and one function lays it. */
export interface SheetPlan {
  readonly name: string;
  readonly sheetClass: SheetClass;
  /** Widths in characters of columns A, B, C ... that no table sets. */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  /** The row, counted from 1, that every printed page repeats. */
  readonly printTitleRow?: number;
  readonly blocks: readonly BlockPlan[];
  readonly names: readonly NamePlan[];
  readonly tables: readonly TablePlan[];
  readonly spills: readonly SpillPlan[];
  readonly entryRules: readonly EntryRulePlan[];
  readonly landscape: boolean;
  /** How it prints, where the sheet is made for paper; left out, as the spreadsheet does by itself. */
  readonly print?: PrintPlan;
}
