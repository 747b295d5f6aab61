import { NameList } from "./nameList";

/** A plot of the list, as the owner marked it. */
export interface ListedPlot {
  readonly name: string | undefined;
  /** Undefined while nobody said whether it was visited. */
  readonly visited: boolean | undefined;
  /** Marked as visited and found without trees. */
  readonly empty: boolean;
}

/** A tree as far as it tells two plots apart. */
export interface PlotTree {
  readonly plot: string | undefined;
  readonly species: string | undefined;
  readonly dbh: number | undefined;
  readonly logs: number | undefined;
}

/** Two plots with fewer trees than this may well be alike by chance; a choice of ours. */
const FEWEST_ALIKE = 3;

/**
 * The first thing that looks wrong with each plot of a list, in one plain sentence; "" when nothing does.
 *
 * A plot that nobody has marked is no mistake while the cruise goes on: it is asked about once something was said of a
 * later one of the list. A big tree may rightly be tallied from two points, so plots are alike only when all their trees are.
 */
export function checkPlots(plots: readonly ListedPlot[], trees: readonly PlotTree[]): readonly string[] {
  const treesOf = new NameList();
  const tallied: PlotTree[][] = [];
  for (const tree of trees) {
    if (tree.plot === undefined) continue;
    (tallied[treesOf.add(tree.plot)] ??= []).push(tree);
  }
  const on = ({ name }: ListedPlot) => tallied[treesOf.placeOf(name ?? "") ?? -1] ?? [];
  const isSaid = (plot: ListedPlot) =>
    plot.name !== undefined && (plot.visited !== undefined || plot.empty || on(plot).length > 0);
  const lastSaid = plots.reduce((last, plot, place) => (isSaid(plot) ? place : last), -1);

  const listed = new NameList();
  const times = plots.map(({ name }) => (name === undefined ? -1 : listed.add(name)));
  const listedTwice = (place: number) => times.some((one, other) => one === times[place] && other !== place);
  const likeBefore = new Map<string, string>();

  return plots.map((plot, place) => {
    const { name } = plot;
    if (name === undefined) return "";
    const here = on(plot);
    const marked = checkMarks(plot, here.length, place < lastSaid);
    if (listedTwice(place)) return "This plot is listed twice.";
    if (marked !== "") return marked;
    // Trees that were only counted are alike everywhere.
    if (here.length < FEWEST_ALIKE || here.some(({ dbh }) => dbh === undefined)) return "";
    if (isTwiceOver(here)) return "Every tree of this plot is there twice. Was it entered twice?";
    const all = keysOf(here).join("\n");
    const before = likeBefore.get(all);
    likeBefore.set(all, before ?? name);
    return before === undefined
      ? ""
      : `Its ${here.length} trees are the same as those of plot ${before}. Was one plot entered under two numbers?`;
  });
}

function checkMarks({ visited, empty }: ListedPlot, trees: number, laterSaid: boolean): string {
  if (trees > 0) return empty ? "Marked as having no trees, but trees are tallied on it." : "";
  if (empty) return "";
  if (visited === true) return "No trees tallied: put Yes under Trees none if it is empty.";
  if (visited === undefined && laterSaid) return "No trees and not marked: is it empty, or not visited yet?";
  return "";
}

const keysOf = (trees: readonly PlotTree[]): readonly string[] =>
  trees.map(({ species = "", dbh = 0, logs = 0 }) => `${species.trim().toLowerCase()} ${dbh} ${logs}`).sort();

/** Each tree once for each other time that it is there, and at least so many different ones. */
function isTwiceOver(trees: readonly PlotTree[]): boolean {
  const keys = keysOf(trees);
  const twice = keys.every((key, place) => key === keys[place % 2 === 0 ? place + 1 : place - 1]);
  return twice && new Set(keys).size >= FEWEST_ALIKE;
}
