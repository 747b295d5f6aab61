import type { ICellData } from "@univerjs/core";
import { type ITableInfoWithUnitId, SetSheetTableMutation } from "@univerjs/sheets-table";
import type { Cells } from "./cells";
import type { PlainValue } from "./plainValue";
import { cellData } from "./cellData";
import { headingWidth } from "./headingWidth";
import { contains, fromEngine, type Place, toEngine } from "./place";
import { BANDED } from "./tableThemes";

/** A table as the grid knows it. The place has the heading row included. */
export interface GridTable {
  readonly id: string;
  readonly name: string;
  readonly place: Place;
}

/** The tables of the open workbook, grown and shrunk as Excel does it. */
export class Tables {
  constructor(private readonly cells: Cells) {}

  list(): GridTable[] {
    return this.cells.workbook.getTableList().map((one) => asGridTable(one as ITableInfoWithUnitId));
  }

  /** Table names are the same whatever their capitals. */
  byName(name: string): GridTable | undefined {
    return this.list().find((one) => one.name.toLowerCase() === name.toLowerCase());
  }

  byId(id: string): GridTable | undefined {
    return this.list().find((one) => one.id === id);
  }

  async add(place: Place, name: string): Promise<string> {
    const id = `table-${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 8)}`;
    await this.cells.workbook.addTable(place.sheetId, name, toEngine(place), id, { tableStyleId: BANDED });
    await this.makeRoomForArrows(place);
    return id;
  }

  /** By the grid's inner command: its outer one refuses a table named as a sheet is, which Excel allows. */
  async rename({ id, place }: GridTable, name: string): Promise<void> {
    await this.cells.run(SetSheetTableMutation.id, { subUnitId: place.sheetId, tableId: id, config: { name } });
  }

  /** Removes the table; its cells stay as they are. */
  async remove({ id }: GridTable): Promise<void> {
    await this.cells.workbook.removeTable(id);
  }

  /**
   * Adds rows below the last one. Cells below the table move down to make room. A cell for which nothing is given gets
   * its column's formula; number formats, styles and entry rules go down with the rows.
   */
  async append(table: GridTable, rows: readonly (readonly (PlainValue | null)[])[]): Promise<void> {
    const { place } = table;
    const below: Place = { ...place, row: place.row + place.rows, rows: rows.length };
    const formulas = this.columnFormulas(table);
    await this.cells.asOneStep(async () => {
      if (!this.cells.blank(below)) await this.shift("sheet.command.insert-range-move-down", below);
      this.cells.write(below, (i, j) => cellData(rows[i]?.[j] ?? formulas[j] ?? ""));
      await this.extend(table, rows.length);
    });
  }

  /** Takes rows that already stand below the table into it. */
  async extend(table: GridTable, rows: number): Promise<void> {
    const { place } = table;
    const added: Place = { ...place, row: place.row + place.rows, rows };
    const formulas = this.columnFormulas(table);
    const before = this.cells.formulas(added);
    const styles = this.stylesOf({ ...place, row: added.row - 1, rows: 1 });
    this.cells.write(added, (i, j) => {
      const formula = formulas[j];
      return formula && before[i]?.[j] === "" ? cellData(formula) : undefined;
    });
    this.cells.dress(added, (_, j) => styles[j]);
    this.extendRules(place, rows);
    await this.resize(table, place.rows + rows);
  }

  /** Takes a row out; what lies below moves up. The last row is emptied instead, for a table keeps one. */
  async deleteRow(table: GridTable, index: number): Promise<void> {
    const { place } = table;
    const row: Place = { ...place, row: place.row + 1 + index, rows: 1 };
    if (place.rows === 2) {
      this.cells.write(row, () => cellData(""));
      return;
    }
    await this.cells.asOneStep(async () => {
      await this.shift("sheet.command.delete-range-move-up", row);
      await this.resize(table, place.rows - 1);
    });
  }

  at(sheetId: string, row: number, column: number): GridTable | undefined {
    return this.list().find((one) => one.place.sheetId === sheetId && contains(one.place, row, column));
  }

  /** The formula of each computed column, read from the last row. */
  private columnFormulas({ place }: GridTable): (string | undefined)[] {
    if (place.rows < 2) return [];
    const last: Place = { ...place, row: place.row + place.rows - 1, rows: 1 };
    const [formulas = []] = this.cells.range(last).getFormulas();
    return formulas.map((formula) => formula || undefined);
  }

  private stylesOf({ sheetId, row, column, columns }: Place): ICellData["s"][] {
    const sheet = this.cells.worksheet(sheetId).getSheet();
    return Array.from({ length: columns }, (_, j) => sheet.getCellRaw(row, column + j)?.s);
  }

  /** An entry rule that reaches the last row of the table reaches the new ones too. */
  private extendRules(place: Place, rows: number): void {
    const sheet = this.cells.worksheet(place.sheetId);
    const last = place.row + place.rows - 1;
    for (const rule of sheet.getDataValidations()) {
      let grown = false;
      const ranges = rule.getRanges().map((range) => {
        const zone = fromEngine(range.getRange());
        if (zone.row + zone.rows - 1 !== last || !contains(place, last, zone.column)) return range;
        grown = true;
        return sheet.getRange(toEngine({ ...zone, rows: zone.rows + rows }));
      });
      if (grown) rule.setRanges(ranges);
    }
  }

  /** The grid draws an arrow over the end of each heading; a column is made wide enough for both. */
  private async makeRoomForArrows(place: Place): Promise<void> {
    const sheet = this.cells.worksheet(place.sheetId);
    const [headings = []] = this.cells.values({ ...place, rows: 1 });
    for (const [j, heading] of headings.entries()) {
      const column = place.column + j;
      const wanted = headingWidth(String(heading));
      if (sheet.getColumnWidth(column) < wanted)
        await this.cells.setColumnWidth({ ...place, column, columns: 1 }, wanted);
    }
  }

  private async resize({ id, place }: GridTable, rows: number): Promise<void> {
    await this.cells.worksheet(place.sheetId).setTableRange(id, toEngine({ ...place, rows }));
  }

  private async shift(command: string, place: Place): Promise<void> {
    await this.cells.run(command, { subUnitId: place.sheetId, range: toEngine(place) });
  }
}

const asGridTable = ({ id, name, range, subUnitId }: ITableInfoWithUnitId): GridTable => ({
  id,
  name,
  place: { sheetId: subUnitId, ...fromEngine(range) },
});
