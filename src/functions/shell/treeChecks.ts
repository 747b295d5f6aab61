import { InvalidInput, Problem } from "../../core/basis/problem";
import { shown } from "../../core/basis/shown";
import { feet, inches } from "../../core/basis/units";
import { checkTally, type FullTallyLine } from "../../core/cruise/checkTally";
import type { TallyRules } from "../../core/cruise/checkTree";
import { NameList } from "../../core/cruise/nameList";
import { column, filledRows, isNothing, sharedRows, type Column } from "./columns";
import { asCells, boundedNumber, DATE, isDateSerial, oneNumber, type Cells } from "./readings";
import { tellingIn } from "./saidIn";
import { sentenceOf } from "./sentenceOf";
import { dbhBounds } from "./tally";
import { limitOf, type LimitOf } from "./treeLimits";
import { unitSystem, type UnitSystem } from "./unitSystem";

export interface CheckArguments {
  readonly plot: unknown;
  readonly species: unknown;
  readonly dbh: unknown;
  readonly logs: unknown;
  readonly plots: unknown;
  readonly speciesList: unknown;
  readonly dbhMin: unknown;
  readonly dbhMax: unknown;
  readonly volume: unknown;
  readonly distance: unknown;
  readonly method: unknown;
  readonly size: unknown;
  readonly units: unknown;
}

interface Lists {
  readonly plot: Column;
  readonly species: Column;
  readonly dbh: Column;
  readonly logs: Column;
  readonly volume: Column;
  readonly distance: Column;
}

/** One sentence or a blank for each line of a tally, in the shape that was given; never an error. */
export function treeChecks(given: CheckArguments): Cells {
  const lists: Lists = {
    plot: column(given.plot, "Plot"),
    species: column(given.species, "Species"),
    dbh: column(given.dbh, "DBH"),
    logs: column(given.logs, "Logs"),
    volume: column(given.volume, "Volume"),
    distance: column(given.distance, "Distance"),
  };
  const size = (cells: Cells) => cells.length * (cells[0]?.length ?? 0);
  const shape = [given.plot, given.species, given.dbh, given.logs]
    .map(asCells)
    .reduce((largest, one) => (size(one) > size(largest) ? one : largest));
  const says = sentences(given, lists, size(shape));
  const wide = shape[0]?.length ?? 1;
  return shape.map((cells, row) => Array.from(cells, (_, place) => says(row * wide + place)));
}

/** The sentence of each line; where the lists or the limits themselves cannot be used, every line says so. */
function sentences(given: CheckArguments, lists: Lists, rows: number): (row: number) => string {
  const { species, dbh, logs } = lists;
  let answers: readonly string[] = [];
  const problem = sentenceOf(() => {
    sharedRows(Object.values(lists) as Column[]);
    const units = unitSystem(given.units);
    const limit = limitOf(given, units);
    const read = Array.from({ length: rows }, (_, row) => lineOf(lists, row, units, limit));
    const odd = checkTally(
      read.map((line) => (typeof line === "string" ? NOTHING : line)),
      rulesOf(given, lists, units),
    );
    answers = read.map((line, row) => (typeof line === "string" ? line : (odd[row] ?? "")));
    return "";
  });
  if (problem === "") return (row) => answers[row] ?? "";
  return (row) => ([species, dbh, logs].every((list) => isNothing(list.at(row))) ? "" : problem);
}

const NOTHING: FullTallyLine = {
  plot: undefined,
  species: undefined,
  dbh: undefined,
  logs: undefined,
  volume: undefined,
  distance: undefined,
  limit: undefined,
};

function rulesOf(
  { plots, speciesList, dbhMin, dbhMax }: CheckArguments,
  { logs }: Lists,
  units: UnitSystem,
): TallyRules {
  const { perOurs, name } = units.diameter;
  const limit = (given: unknown, what: string, usual: number) =>
    inches(oneNumber(given, what, dbhBounds(units), usual * perOurs) / perOurs);
  const [leastDbh, mostDbh] = [limit(dbhMin, "Least DBH", 1), limit(dbhMax, "Largest DBH", 60)];
  if (leastDbh > mostDbh) {
    throw new InvalidInput(
      `Least DBH should be at most the largest one, ${shown(mostDbh * perOurs)} ${name}. You have ${shown(leastDbh * perOurs)}.`,
    );
  }
  return {
    plots: namesIn(plots),
    species: namesIn(speciesList),
    leastDbh,
    mostDbh,
    ...(units.metric && { telling: tellingIn(units) }),
    logsMeasured: anyFilled(logs),
  };
}

/** A line, or the sentence that says which of its cells cannot be read. */
function lineOf(lists: Lists, row: number, units: UnitSystem, limit: LimitOf): FullTallyLine | string {
  try {
    const dbh = numberIn(lists.dbh, row, units.diameter.perOurs);
    const distance = numberIn(lists.distance, row, units.distance.perOurs);
    const volume: unknown = lists.volume.at(row);
    return {
      plot: nameAt(lists.plot, row),
      species: nameAt(lists.species, row),
      dbh,
      logs: numberIn(lists.logs, row),
      // A volume that is no number says so in its own cell.
      volume: typeof volume === "number" && volume > 0 && Number.isFinite(volume) ? volume : undefined,
      distance: distance === undefined ? undefined : feet(distance),
      limit: dbh !== undefined && dbh > 0 && distance !== undefined ? limit(dbh, nameAt(lists.plot, row)) : undefined,
    };
  } catch (problem) {
    if (problem instanceof Problem) return problem.message;
    throw problem;
  }
}

function nameAt(list: Column, row: number): string | undefined {
  const cell = list.at(row);
  if (isNothing(cell)) return undefined;
  if (isDateSerial(Number(cell))) {
    throw new InvalidInput(
      `${list.what} looks like a date. Excel turned the name into one; use a name that cannot be read as a date.`,
    );
  }
  return String(cell).trim();
}

function numberIn(list: Column, row: number, perOurs = 1): number | undefined {
  const cell = list.at(row);
  if (isNothing(cell)) return undefined;
  if (isDateSerial(Number(cell))) throw new InvalidInput(DATE);
  return boundedNumber(cell, list.what, { unit: "" }) / perOurs;
}

function namesIn(given: unknown): NameList {
  const list = column(given, "List");
  const found = new NameList();
  const filled = filledRows(list);
  for (let row = 0; row < filled; row += 1) if (!isNothing(list.at(row))) found.add(String(list.at(row)));
  return found;
}

function anyFilled(list: Column): boolean {
  for (let row = 0; row < list.rows; row += 1) if (!isNothing(list.at(row))) return true;
  return false;
}
