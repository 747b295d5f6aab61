import { demoContent } from "../../src/demo/demoWorkbook";
import { treeLumber } from "../../src/functions/harvest";
import { treesPerAcre } from "../../src/functions/stand";
import { treeVolume } from "../../src/functions/tree";
import type { TableRow } from "../../src/workbook/plan";
import { board, mill, plot, tree } from "../../src/workbook/tables";

/** A column of a table as a cell's formula hands it to a function. */
export const columnOf = (rows: readonly TableRow[], heading: string): unknown[][] =>
  rows.map((row) => [row[heading] ?? null]);

const { settings, trees, plots, boards, mill: limits } = demoContent;

export const boardCells = boards.map((row) => [row[board.sawn], row[board.width], row[board.price] ?? null]);
export const millCells = limits.map((row) => [row[mill.limit], row[mill.value] ?? null]);
export const pattern = "Live" as never;

/** Every plot of the demo was visited, so all are counted. */
export const countedPlots = columnOf(plots, plot.plot);
export const plotColumn = columnOf(trees, tree.plot);
export const speciesColumn = columnOf(trees, tree.species);
export const dbhColumn = columnOf(trees, tree.dbh);
export const logsColumn = columnOf(trees, tree.logs);
const sound = trees.map((row) => 1 - Number(row[tree.cull] ?? 0) / 100);
const stays = trees.map((row) => row[tree.take] === "No");

/** The computed columns of the sheet Trees, worked out as its formulas say, by the very functions that they call. */
export const volumeColumn = treeVolume(
  dbhColumn,
  logsColumn,
  settings.rule as never,
  [[settings.formClass]],
  "imperial" as never,
);
export const lumberColumn = treeLumber(
  dbhColumn,
  logsColumn,
  boardCells,
  settings.kerf,
  pattern,
  settings.formClass,
).map(([lumber], i) => [(Number(lumber) * settings.realized * (sound[i] ?? 1)) / 100]);
export const harvestDbhColumn = dbhColumn.map(([dbh], i) => [stays[i] ? "" : (dbh as number)]);
export const harvestColumn = volumeColumn.map(([volume], i) => [stays[i] ? "" : Number(volume) * (sound[i] ?? 1)]);
export const perAcreColumn = treesPerAcre(dbhColumn, settings.method as never, settings.size as never);
