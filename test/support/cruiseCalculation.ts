import { chosen } from "../../src/core/basis/choices";
import { inches, percent } from "../../src/core/basis/units";
import { byTotalHeight } from "../../src/core/cruise/checkHeight";
import { checkPlots } from "../../src/core/cruise/checkPlots";
import { checkTree } from "../../src/core/cruise/checkTree";
import { NameList } from "../../src/core/cruise/nameList";
import { logRules } from "../../src/core/log/rules";
import { treeVolume } from "../../src/core/tree/treeVolume";
import { boardFeet } from "../../src/functions/boards";
import { logScale } from "../../src/functions/logs";
import { compareWays } from "../../src/functions/money";
import { morePlots } from "../../src/functions/sampling";
import { scalingDiameter, scalingLength } from "../../src/functions/scaling";
import { standTable } from "../../src/functions/classTables";
import { tractTotal } from "../../src/functions/stand";
import { plotTable, standSummary } from "../../src/functions/standSummary";
import type { CellValue, TableRow } from "../../src/workbook/plan";
import {
  BOARDS,
  log,
  LOGS,
  named,
  out,
  plot,
  PLOTS,
  sawn,
  species,
  SPECIES,
  tree,
  TREES,
} from "../../src/workbook/tables";
import type { Calculation, MemoryBook } from "./memoryHost";
import { buckingAnswers } from "./buckingCalculation";
import { heightCheck, productAnswers, speciesFacts, woodOf } from "./heightCalculation";
import { cutAnswers } from "./cutCalculation";
import { sawingAnswers } from "./sawingCalculation";

/** The workbook's own functions over a book in memory, so that the pane reads figures that follow the tally. */
export const cruiseCalculation: Calculation = { row: computed, spill };

type Column = (CellValue | undefined)[][];

const rowsOf = (book: MemoryBook, table: string) => book.tables.get(table)?.rows ?? [];
const column = (book: MemoryBook, table: string, heading: string): Column =>
  rowsOf(book, table).map((row) => [computed(table, row, book)[heading] ?? row[heading] ?? null]);
const setting = (book: MemoryBook, name: string) => Number(book.names.get(name));

function computed(table: string, row: TableRow, book: MemoryBook): TableRow {
  if (table === SPECIES) return speciesFacts(row);
  if (table === TREES)
    return {
      [tree.volume]: volume(row, book),
      [tree.wood]: woodOf(row, book),
      [tree.check]: treeCheck(row, book) || heightCheck(row, book),
    };
  if (table === PLOTS)
    return { [plot.counted]: counted(row, book) ? (row[plot.plot] ?? null) : "", [plot.check]: plotCheck(row, book) };
  if (table === LOGS) return scaled(row, book);
  if (table === BOARDS)
    return {
      [sawn.boardFeet]: boardFeet(
        [[row[sawn.thickness]]],
        [[row[sawn.width]]],
        [[row[sawn.length]]],
        [[row[sawn.pieces]]],
      )[0]?.[0] as CellValue,
      [sawn.check]: "",
    };
  return {};
}

/** The scale of a log, as the formulas of the sheet Logs chain the functions. */
function scaled(row: TableRow, book: MemoryBook): TableRow {
  const cell = (heading: string) => [[row[heading] ?? null]];
  const name = (word: string) => book.names.get(word) as never;
  const deduction = Number(row[log.deduction] ?? 0);
  const check = deduction > 0 && deduction < 1 ? "A deduction under 1 percent: type 15 for 15 percent." : "";
  try {
    const diameter = scalingDiameter(cell(log.smallEnd), cell(log.second), name(named.diameterRounding));
    const length = scalingLength(cell(log.length), name(named.trim), name(named.lengthStep));
    const scale = (taken: unknown[][]) =>
      logScale(
        diameter,
        length,
        name(named.scaleRule),
        taken,
        name(named.scaleRounding),
        name(named.longestLength),
        cell(log.largeEnd),
        name(named.diameterRounding),
      )[0]?.[0] as CellValue;
    return { [log.gross]: scale([[0]]), [log.net]: scale(cell(log.deduction)), [log.check]: check };
  } catch {
    return { [log.gross]: "#VALUE!", [log.net]: "#VALUE!", [log.check]: check };
  }
}

function volume(row: TableRow, book: MemoryBook): CellValue {
  const [dbh, logs] = [Number(row[tree.dbh]), Number(row[tree.logs])];
  if (!(dbh > 0) || !(logs > 0)) return "";
  const formClass = percent(setting(book, named.formClass));
  try {
    return treeVolume({ dbh: inches(dbh), logs, formClass }, chosen("Rule", book.names.get(named.rule), logRules));
  } catch {
    return "#N/A";
  }
}

function treeCheck(row: TableRow, book: MemoryBook): string {
  const text = (heading: string) => (row[heading] == null ? undefined : String(row[heading]));
  const number = (heading: string) => (typeof row[heading] === "number" ? row[heading] : undefined);
  const list = (table: string, heading: string) => new NameList(rowsOf(book, table).map((one) => String(one[heading])));
  return checkTree(
    { plot: text(tree.plot), species: text(tree.species), dbh: number(tree.dbh), logs: number(tree.logs) },
    {
      plots: list(PLOTS, plot.plot),
      species: list(SPECIES, species.code),
      leastDbh: inches(setting(book, named.minDbh)),
      mostDbh: inches(setting(book, named.maxDbh)),
      logsMeasured: book.names.get(named.heightMeasured) !== byTotalHeight.title,
    },
  );
}

const tallied = (row: TableRow, book: MemoryBook) =>
  rowsOf(book, TREES).filter((one) => String(one[tree.plot]) === String(row[plot.plot])).length;

const counted = (row: TableRow, book: MemoryBook) =>
  row[plot.visited] === "Yes" || row[plot.none] === "Yes" || tallied(row, book) > 0;

function plotCheck(row: TableRow, book: MemoryBook): string {
  const text = (of: TableRow, heading: string) => (of[heading] == null ? undefined : String(of[heading]));
  const plots = rowsOf(book, PLOTS);
  const marks = plots.map((of) => ({
    name: text(of, plot.plot),
    visited: of[plot.visited] == null ? undefined : of[plot.visited] === "Yes",
    empty: of[plot.none] === "Yes",
  }));
  const trees = rowsOf(book, TREES).map((of) => ({
    plot: text(of, tree.plot),
    species: text(of, tree.species),
    dbh: Number(of[tree.dbh]) || undefined,
    logs: Number(of[tree.logs]) || undefined,
  }));
  return checkPlots(marks, trees)[plots.findIndex((of) => of[plot.plot] === row[plot.plot])] ?? "";
}

function spill(name: string, book: MemoryBook): readonly (readonly CellValue[])[] | undefined {
  const of = (table: string, heading: string) => column(book, table, heading);
  const [size, confidence] = [setting(book, named.size), setting(book, named.confidence)];
  const point = "Point" as never;
  const plots = of(PLOTS, plot.counted);
  const summary = () =>
    standSummary(
      of(TREES, tree.plot),
      of(TREES, tree.dbh),
      plots,
      point,
      [[size]],
      of(TREES, tree.volume),
      of(TREES, tree.count),
      confidence,
    );
  const perPlot = () =>
    plotTable(
      of(TREES, tree.plot),
      of(TREES, tree.dbh),
      of(TREES, tree.volume),
      plots,
      point,
      [[size]],
      of(TREES, tree.count),
    );
  const total = () => {
    const row = summary()[4] ?? [];
    if (typeof row[2] !== "number") return [[""]];
    return tractTotal(row[1], row[2], setting(book, named.acres), setting(book, named.acresMargin));
  };
  const answers: Readonly<Record<string, () => CellValue[][]>> = {
    ...sawingAnswers(book),
    ...buckingAnswers(book),
    ...cutAnswers(of, size),
    ...productAnswers(book),
    [out.summary]: summary,
    [out.harvest]: summary,
    [out.lumber]: summary,
    [out.tract]: total,
    [out.tractHarvest]: total,
    [out.tractLumber]: total,
    [out.plots]: perPlot,
    [out.morePlots]: () => [
      [
        morePlots(
          perPlot()
            .slice(1)
            .map((row) => [row[4] as CellValue]),
          setting(book, named.target),
          confidence,
        ),
      ],
    ],
    [out.stand]: () =>
      standTable(
        of(TREES, tree.plot),
        of(TREES, tree.species),
        of(TREES, tree.dbh),
        plots,
        point,
        [[size]],
        2,
        of(TREES, tree.count),
      ),
    [out.compare]: () =>
      compareWays(
        [["Sell standing"], ["Sell as logs"], ["Saw at home"]],
        [[77400], [88000], [102000]],
        [[60300], [70000], [70000]],
        [[94500], [106000], [134000]],
      ),
  };
  const answer = answers[name];
  if (!answer || !book.tables.has(TREES)) return undefined;
  try {
    return answer();
  } catch {
    return [["#VALUE!"]];
  }
}
