import type { FunctionError } from "./collector";

/** The cell from which the engine calls a function. */
export interface CalledFrom {
  readonly subUnitId?: string;
  readonly row?: number;
  readonly column?: number;
}

interface Told {
  readonly row: number;
  readonly column: number;
  readonly code: string;
  readonly sentence: string;
}

/**
 * The sentence behind each error in the grid. Excel keeps it in the cell's flag; this engine keeps only the code,
 * so the sentence is remembered by the cell and the function that said it, until that function says otherwise.
 */
export class Sentences {
  private readonly sheets = new Map<string, Map<string, readonly Told[]>>();

  /** Notes what one call said; an empty list forgets what the same function said before in that cell. */
  note(
    from: CalledFrom,
    functionName: string,
    errors: readonly { error: FunctionError; row: number; column: number }[],
  ) {
    const { subUnitId = "", row = 0, column = 0 } = from;
    let sheet = this.sheets.get(subUnitId);
    if (errors.length === 0) {
      if (sheet && sheet.size > 0) sheet.delete(`${row},${column},${functionName}`);
      return;
    }
    if (!sheet) this.sheets.set(subUnitId, (sheet = new Map<string, readonly Told[]>()));
    sheet.set(
      `${row},${column},${functionName}`,
      errors.map(({ error, ...at }) => ({
        row: row + at.row,
        column: column + at.column,
        code: error.code,
        sentence: error.message,
      })),
    );
  }

  /** The sentence for a cell that shows this error, if one of our functions said it. */
  find(sheetId: string, row: number, column: number, code: string): string | undefined {
    for (const list of this.sheets.get(sheetId)?.values() ?? []) {
      const told = list.find((one) => one.row === row && one.column === column && one.code === code);
      if (told?.sentence) return told.sentence;
    }
    return undefined;
  }

  /** Forgets all, as when rows moved and cells are no longer where they were. */
  clear(): void {
    this.sheets.clear();
  }
}
