import { samePlot, type Job, type SavedPlot } from "../job/job";
import type { Pane } from "../pane";
import { layAsking } from "../plan/layAsking";
import { speciesList } from "../plan/speciesList";
import type { PastedTally } from "../../workbook/pastedTally";
import {
  blankCosts,
  blankLimits,
  blankPrices,
  noLocalVolume,
  noStem,
  usualBoards,
  usualProducts,
} from "../../workbook/emptyWorkbook";
import type { Settings } from "../../workbook/settings";
import {
  plot as plotHeading,
  PLOTS,
  species as speciesHeading,
  tree as treeHeading,
  TREES,
} from "../../workbook/tables";
import { workbookPlan } from "../../workbook/workbookPlan";
import { emptyPaste } from "./pasteState";

/** Adds a pasted tally to the cruise that is open: points first, because a tree needs its point. */
export async function addToCruise(pane: Pane, job: Job, pasted: PastedTally): Promise<void> {
  const standing = (row: PastedTally["plots"][number]) =>
    job.plots.find(({ name }) => samePlot(name, String(row[plotHeading.plot] ?? "")));
  const done = await pane.run("Writing the tally", async () => {
    const added = pasted.plots.filter((row) => !standing(row));
    if (added.length > 0) await pane.host.appendRows(PLOTS, added);
    if (pasted.kind === "points") await fillPlots(pane, pasted, standing);
    for (const row of pasted.kind === "points" ? [] : pasted.plots) {
      const there = standing(row);
      const { [plotHeading.visited]: visited = null, [plotHeading.none]: none = null, [plotHeading.kind]: kind } = row;
      const emptyNow =
        none === "Yes" && job.trees.some(({ plot }) => there && samePlot(plot, there.name)) ? null : none;
      if (there)
        await pane.host.updateRow(PLOTS, there.row, {
          [plotHeading.visited]: visited,
          [plotHeading.none]: emptyNow,
          ...(kind !== undefined &&
            !job.trees.some(({ plot }) => samePlot(plot, there.name)) && { [plotHeading.kind]: kind }),
        });
    }
    if (pasted.trees.length > 0) await pane.host.appendRows(TREES, pasted.trees);
    await pane.refresh();
  });
  if (done) finish(pane, pasted);
}

/** Fills what is blank in the rows of plots that there are; what stands there stays. */
async function fillPlots(
  pane: Pane,
  { plots }: PastedTally,
  standing: (row: PastedTally["plots"][number]) => SavedPlot | undefined,
): Promise<void> {
  const { rows } = await pane.host.readTable(PLOTS);
  const all = plots.flatMap((pasted) => {
    const there = standing(pasted);
    if (!there) return [];
    const blank = Object.entries(pasted).filter(
      ([heading, value]) => value !== null && (rows[there.row]?.[heading] ?? null) === null,
    );
    return blank.length === 0 ? [] : [{ row: there.row, changes: Object.fromEntries(blank) }];
  });
  if (all.length > 0) await pane.host.updateRows(PLOTS, all);
}

/** Builds a workbook around a pasted tally. */
export async function startWith(pane: Pane, pasted: PastedTally, settings: Settings): Promise<void> {
  const codes = [...new Set(pasted.trees.map((row) => String(row[treeHeading.species] ?? "")))].filter(
    (code) => code !== "",
  );
  const known = speciesList(pane.state.plan.species);
  const lineOf = (code: string) => {
    const found = known.find((one) => one.code.toLowerCase() === code.toLowerCase());
    return {
      [speciesHeading.code]: code,
      [speciesHeading.name]: found?.name ?? code,
      ...(found?.fia !== undefined && { [speciesHeading.fia]: found.fia }),
    };
  };
  const sheets = workbookPlan({
    settings,
    species: codes.map(lineOf),
    plots: pasted.plots,
    trees: pasted.trees,
    logs: [],
    sawn: [],
    boards: usualBoards,
    mill: blankLimits,
    products: usualProducts,
    localVolume: noLocalVolume,
    cutList: [],
    stem: noStem,
    prices: blankPrices,
    costs: blankCosts,
    invented: false,
  });
  await layAsking(pane, sheets, "Building the workbook", () => finish(pane, pasted));
}

function finish(pane: Pane, { kind, trees, plots, rejects }: PastedTally): void {
  const left =
    rejects.length === 0 ? "" : ` ${rejects.length} ${rejects.length === 1 ? "line was" : "lines were"} left out.`;
  const result =
    kind === "points"
      ? `${plots.length} ${plots.length === 1 ? "point" : "points"} taken in.${left} Paste the trees next.`
      : `${lines(trees.length)} on ${plots.length} ${plots.length === 1 ? "point" : "points"} taken in.${left}`;
  pane.set({ paste: { ...emptyPaste, result } });
  pane.say(result);
}

const lines = (count: number) => `${count} ${count === 1 ? "line" : "lines"} of trees`;
