import { combinedVariable } from "../core/tree/local/combinedVariable";
import { felled } from "../workbook/tables";
import type { LocalVolumeContent } from "../workbook/workbookContent";

/** Invented white oaks: DBH in, height ft, wood ft3. */
const lines: readonly (readonly [dbh: number, height: number, volume: number])[] = [
  [8.4, 52, 9.1],
  [10.1, 57, 13.6],
  [11.6, 61, 19.9],
  [12.8, 66, 24.3],
  [14.2, 64, 31.5],
  [15.5, 71, 38.6],
  [16.9, 72, 49.2],
  [18.3, 77, 56.8],
  [19.7, 75, 69.4],
  [21.8, 81, 86.9],
];

/** A table of their own for the white oaks of the demo, not yet used for its tally. */
export const demoLocalVolume: LocalVolumeContent = {
  form: combinedVariable.title,
  use: null,
  species: "wo",
  felled: lines.map(([dbh, height, volume], i) => ({
    [felled.tree]: i + 1,
    [felled.species]: "wo",
    [felled.dbh]: dbh,
    [felled.height]: height,
    [felled.volume]: volume,
  })),
};
