import type { Calculation } from "../engine/calculation";
import type { Cells } from "../engine/cells";
import type { Spreadsheet } from "../engine/spreadsheet";
import type { Tables } from "../engine/tables";

/** All that the stand-in asks of the grid. */
export interface Engine {
  readonly spreadsheet: Spreadsheet;
  readonly calculation: Calculation;
  readonly cells: Cells;
  readonly tables: Tables;
}
