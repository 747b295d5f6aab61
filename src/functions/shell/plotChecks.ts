import { chosen } from "../../core/basis/choices";
import { checkPlots, type ListedPlot, type PlotTree } from "../../core/cruise/checkPlots";
import { column, filledRows, isNothing, sharedRows, type Column } from "./columns";
import { asCells, type Cells } from "./readings";
import { sentenceOf } from "./sentenceOf";

export interface PlotArguments {
  readonly plot: unknown;
  readonly species: unknown;
  readonly dbh: unknown;
  readonly logs: unknown;
  readonly plots: unknown;
  readonly visited: unknown;
  readonly none: unknown;
}

/** One sentence or a blank for each plot of the list, in the shape that was given; never an error. */
export function plotChecks(given: PlotArguments): Cells {
  const says = plotSentences(given);
  const shape = asCells(given.plots);
  const wide = shape[0]?.length ?? 1;
  return shape.map((row, at) => Array.from(row, (_, place) => says(at * wide + place)));
}

function plotSentences(given: PlotArguments): (row: number) => string {
  const names = column(given.plots, "Plot list");
  const lists = [names, column(given.visited, "Visited"), column(given.none, "Trees none")] as const;
  let answers: readonly string[] = [];
  const problem = sentenceOf(() => {
    sharedRows(lists);
    const rows = Array.from({ length: filledRows(names) }, (_, row) => row);
    answers = checkPlots(
      rows.map((row) => listedPlot(lists, row)),
      treesIn(given),
    );
    return "";
  });
  return (row) => (problem === "" ? (answers[row] ?? "") : isNothing(names.at(row)) ? "" : problem);
}

function listedPlot([names, visited, none]: readonly [Column, Column, Column], row: number): ListedPlot {
  return {
    name: textAt(names, row),
    visited: isNothing(visited.at(row)) ? undefined : saysYes(visited, row),
    empty: isNothing(none.at(row)) ? false : saysYes(none, row),
  };
}

const yes = { title: "Yes", aliases: ["Y", "True"], is: true };
const no = { title: "No", aliases: ["N", "False"], is: false };
const saysYes = (list: Column, row: number) => chosen(list.what, list.at(row), [yes, no]).is;

function treesIn({ plot, species, dbh, logs }: PlotArguments): readonly PlotTree[] {
  const lists = [column(plot, "Plot"), column(species, "Species"), column(dbh, "DBH"), column(logs, "Logs")] as const;
  const [plots, names, diameters, heights] = lists;
  return Array.from({ length: sharedRows(lists) }, (_, row) => ({
    plot: textAt(plots, row),
    species: textAt(names, row),
    dbh: numberOf(diameters.at(row)),
    logs: numberOf(heights.at(row)),
  }));
}

const textAt = (list: Column, row: number) => {
  const cell = list.at(row);
  return isNothing(cell) ? undefined : String(cell).trim().slice(0, 100);
};

/** What is no number is the business of the tree's own check. */
const numberOf = (cell: unknown) => (typeof cell === "number" && cell > 0 ? cell : undefined);
