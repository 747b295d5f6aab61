import type { TableContent, WorkbookHost } from "../../workbook/host";
import type { CellValue, TableRow } from "../../workbook/plan";
import {
  LOGS,
  log as logHeading,
  named,
  PLOTS,
  plot as plotHeading,
  SPECIES,
  species as speciesHeading,
  tree as treeHeading,
  TREES,
} from "../../workbook/tables";
import type { Job, SavedLog, SavedPlot, SavedTree } from "./job";

const settingNames = [
  named.stand,
  named.acres,
  named.acresMargin,
  named.method,
  named.size,
  named.confidence,
  named.target,
  named.rule,
  named.formClass,
  named.minDbh,
  named.maxDbh,
  named.invented,
];

/** Reads the cruise from the workbook; undefined when the workbook has none. */
export async function readJob(host: WorkbookHost): Promise<Job | undefined> {
  const [hasPlots, hasTrees, hasLogs] = await Promise.all([PLOTS, TREES, LOGS].map((name) => host.hasTable(name)));
  if (!hasPlots && !hasTrees) return undefined;
  const [plots, trees, species, settings, logs] = await Promise.all([
    host.readTable(PLOTS),
    host.readTable(TREES),
    host.readTable(SPECIES),
    host.readNames(settingNames),
    hasLogs ? host.readTable(LOGS) : undefined,
  ]);
  return {
    stand: text(settings[named.stand]) || "Your woodlot",
    acres: number(settings[named.acres]),
    acresMargin: number(settings[named.acresMargin]) ?? 0,
    method: text(settings[named.method]) || "Point",
    size: number(settings[named.size]) ?? 0,
    confidence: number(settings[named.confidence]) ?? 95,
    target: number(settings[named.target]) ?? 20,
    rule: text(settings[named.rule]),
    formClass: number(settings[named.formClass]) ?? 78,
    minDbh: number(settings[named.minDbh]) ?? 1,
    maxDbh: number(settings[named.maxDbh]) ?? 60,
    invented: yes(settings[named.invented]),
    species: rowsOf(species, (row) => ({
      code: text(row[speciesHeading.code]),
      name: text(row[speciesHeading.name]),
    })).filter(({ code }) => code !== ""),
    trees: treesOf(trees),
    plots: plotsOf(plots),
    logs: logs ? logsOf(logs) : [],
  };
}

const rowsOf = <T>(table: TableContent, one: (row: TableRow, place: number) => T) => table.rows.map(one);

/** A new table has one blank row, which is no tree. */
export const treesOf = (table: TableContent): readonly SavedTree[] =>
  rowsOf(table, (row, place) => ({
    row: place,
    plot: text(row[treeHeading.plot]),
    tree: {
      species: text(row[treeHeading.species]),
      dbh: number(row[treeHeading.dbh]) ?? 0,
      logs: number(row[treeHeading.logs]),
      count: number(row[treeHeading.count]) ?? 1,
      cull: number(row[treeHeading.cull]),
      note: text(row[treeHeading.note]),
    },
    volume: number(row[treeHeading.volume]),
    check: text(row[treeHeading.check]),
    accepted: text(row[treeHeading.accepted]),
  })).filter(({ plot, tree }) => plot !== "" || tree.species !== "" || tree.dbh > 0);

export const plotsOf = (table: TableContent): readonly SavedPlot[] =>
  rowsOf(table, (row, place) => ({
    row: place,
    name: text(row[plotHeading.plot]),
    value: row[plotHeading.plot] as string | number,
    visited: yes(row[plotHeading.visited]) || yes(row[plotHeading.none]),
    empty: yes(row[plotHeading.none]),
    check: text(row[plotHeading.check]),
  })).filter(({ name }) => name !== "");

const logsOf = (table: TableContent): readonly SavedLog[] =>
  rowsOf(table, (row, place) => ({
    row: place,
    name: text(row[logHeading.log]),
    net: number(row[logHeading.net]),
    lumber: number(row[logHeading.lumber]),
    check: text(row[logHeading.check]),
  })).filter(({ name, net }) => name !== "" || net !== null);

const text = (value: CellValue | undefined) => (value === null || value === undefined ? "" : String(value).trim());

const number = (value: CellValue | undefined) => (typeof value === "number" && Number.isFinite(value) ? value : null);

const yes = (value: CellValue | undefined) => value === true || /^(yes|y|true|1)$/i.test(text(value));
