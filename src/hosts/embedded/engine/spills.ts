import type { IRange, IUnitRange } from "@univerjs/core";
import type { Spreadsheet } from "./spreadsheet";

interface Zone {
  readonly place: IUnitRange;
  /** What the cells held, written out so that two looks can be compared. */
  readonly held: string;
}

type Nested<T> = Partial<Record<string, Partial<Record<string, Partial<Record<number, Partial<Record<number, T>>>>>>>>;

/**
 * Remembers what formulas have spilled into other cells. The engine calculates anew what depends on a formula's own
 * cell, but forgets the formulas that look only at the cells beside it; here one learns which cells those are.
 */
export class Spills {
  private before: ReadonlyMap<string, Zone> = new Map();

  constructor(private readonly spreadsheet: Spreadsheet) {}

  /** Where answers have come, gone or changed since the last look. */
  changed(): IUnitRange[] {
    const now = this.look();
    const changed: IUnitRange[] = [];
    for (const [key, zone] of now) if (this.before.get(key)?.held !== zone.held) changed.push(zone.place);
    for (const [key, zone] of this.before) if (!now.has(key)) changed.push(zone.place);
    this.before = now;
    return changed;
  }

  private look(): Map<string, Zone> {
    const { formulaData } = this.spreadsheet;
    const ranges = formulaData.getArrayFormulaRange() as Nested<IRange>;
    const cells = formulaData.getArrayFormulaCellData() as Nested<{ readonly v?: unknown }>;
    const zones = new Map<string, Zone>();
    for (const [unitId, sheets] of Object.entries(ranges)) {
      for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
        for (const [row, columns] of Object.entries(rows ?? {})) {
          for (const [column, range] of Object.entries(columns ?? {})) {
            if (!range) continue;
            const held = heldIn(cells[unitId]?.[sheetId], range);
            zones.set(`${unitId} ${sheetId} ${row} ${column}`, { place: { unitId, sheetId, range }, held });
          }
        }
      }
    }
    return zones;
  }
}

function heldIn(
  cells: Partial<Record<number, Partial<Record<number, { readonly v?: unknown }>>>> | undefined,
  { startRow, endRow, startColumn, endColumn }: IRange,
): string {
  const values: unknown[] = [endRow - startRow, endColumn - startColumn];
  for (let row = startRow; row <= endRow; row += 1) {
    for (let column = startColumn; column <= endColumn; column += 1) values.push(cells?.[row]?.[column]?.v ?? null);
  }
  return JSON.stringify(values);
}
