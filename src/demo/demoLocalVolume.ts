import { combinedVariable } from "../core/tree/local/combinedVariable";
import { felled } from "../workbook/tables";
import type { LocalVolumeContent } from "../workbook/workbookContent";

/** Invented white oaks: DBH in, height ft, wood ft3. */
const lines: readonly (readonly [dbh: number, height: number, volume: number])[] = [
  [8.4, 49, 8.6],
  [10.1, 62, 14.9],
  [11.6, 58, 18.7],
  [12.8, 69, 26.2],
  [14.2, 62, 30.1],
  [15.5, 74, 41.2],
  [16.9, 70, 45.6],
  [18.3, 80, 62.8],
  [19.7, 72, 63.9],
  [21.8, 84, 94.4],
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
