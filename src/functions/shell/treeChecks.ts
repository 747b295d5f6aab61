import { InvalidInput, Problem } from "../../core/basis/problem";
import { shown } from "../../core/basis/shown";
import { inches } from "../../core/basis/units";
import { checkTree, type TallyRules } from "../../core/cruise/checkTree";
import { NameList } from "../../core/cruise/nameList";
import { column, filledRows, isNothing, sharedRows, type Column } from "./columns";
import { asCells, boundedNumber, DATE, isDateSerial, oneNumber, type Cells } from "./readings";
import { dbhBounds } from "./tally";
import { unitSystem } from "./unitSystem";

export interface CheckArguments {
  readonly plot: unknown;
  readonly species: unknown;
  readonly dbh: unknown;
  readonly logs: unknown;
  readonly plots: unknown;
  readonly speciesList: unknown;
  readonly dbhMin: unknown;
  readonly dbhMax: unknown;
}

interface Lists {
  readonly plot: Column;
  readonly species: Column;
  readonly dbh: Column;
  readonly logs: Column;
}

/** The diameters that the tables of the stand take. [in] */
const LIMIT = dbhBounds(unitSystem(null));

/** One sentence or a blank for each line of a tally, in the shape that was given; never an error. */
export function treeChecks(given: CheckArguments): Cells {
  const lists: Lists = {
    plot: column(given.plot, "Plot"),
    species: column(given.species, "Species"),
    dbh: column(given.dbh, "DBH"),
    logs: column(given.logs, "Logs"),
  };
  const check = lineCheck(given, lists);
  const size = (cells: Cells) => cells.length * (cells[0]?.length ?? 0);
  const shape = [given.plot, given.species, given.dbh, given.logs]
    .map(asCells)
    .reduce((largest, one) => (size(one) > size(largest) ? one : largest));
  const wide = shape[0]?.length ?? 1;
  return shape.map((cells, row) => Array.from(cells, (_, place) => check(row * wide + place)));
}

/** The check of one line; where the lists or the limits themselves cannot be used, every line says so. */
function lineCheck(given: CheckArguments, lists: Lists): (row: number) => string {
  const { plot, species, dbh, logs } = lists;
  try {
    sharedRows(Object.values(lists) as Column[]);
    const leastDbh = inches(oneNumber(given.dbhMin, "Least DBH", LIMIT, 1));
    const mostDbh = inches(oneNumber(given.dbhMax, "Largest DBH", LIMIT, 60));
    if (leastDbh > mostDbh) {
      throw new InvalidInput(
        `Least DBH should be at most the largest one, ${shown(mostDbh)} in. You have ${shown(leastDbh)}.`,
      );
    }
    const rules: TallyRules = {
      plots: namesIn(given.plots),
      species: namesIn(given.speciesList),
      leastDbh,
      mostDbh,
      logsMeasured: anyFilled(logs),
    };
    return (row) =>
      sentenceOf(() =>
        checkTree(
          {
            plot: nameAt(plot, row),
            species: nameAt(species, row),
            dbh: numberIn(dbh, row),
            logs: numberIn(logs, row),
          },
          rules,
        ),
      );
  } catch (problem) {
    const said = sentenceOf(() => raise(problem));
    return (row) => ([species, dbh, logs].every((list) => isNothing(list.at(row))) ? "" : said);
  }
}

function sentenceOf(check: () => string): string {
  try {
    return check();
  } catch (problem) {
    if (problem instanceof Problem) return problem.message;
    throw problem;
  }
}

function raise(problem: unknown): never {
  throw problem;
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

function numberIn(list: Column, row: number): number | undefined {
  const cell = list.at(row);
  if (isNothing(cell)) return undefined;
  if (isDateSerial(Number(cell))) throw new InvalidInput(DATE);
  return boundedNumber(cell, list.what, { unit: "" });
}

function namesIn(given: unknown): NameList {
  const list = column(given, "List");
  const found = new NameList();
  for (let row = filledRows(list) - 1; row >= 0; row -= 1)
    if (!isNothing(list.at(row))) found.add(String(list.at(row)));
  return found;
}

function anyFilled(list: Column): boolean {
  for (let row = 0; row < list.rows; row += 1) if (!isNothing(list.at(row))) return true;
  return false;
}
