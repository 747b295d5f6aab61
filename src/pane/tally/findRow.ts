import { HostProblem, type WorkbookHost } from "../../workbook/host";
import { PLOTS, TREES } from "../../workbook/tables";
import { plotsOf, treesOf } from "../job/readJob";
import { samePlot } from "../job/job";
import type { TallyTree } from "./tallyTree";
import { writeTallyLine } from "./writeTallyLine";

/**
 * Row of a tallied tree now: the last one of its point that reads the same. Row numbers are not remembered, because
 * a table may be sorted or cut short while the pane stands open.
 */
export async function findTreeRow(host: WorkbookHost, plot: string, tree: TallyTree): Promise<number> {
  const line = writeTallyLine(tree);
  const saved = [...treesOf(await host.readTable(TREES))]
    .reverse()
    .find((one) => samePlot(one.plot, plot) && writeTallyLine(one.tree) === line);
  if (saved) return saved.row;
  throw new HostProblem(
    "refused",
    `The line "${line}" of point ${plot} is no longer in the Trees table, so it was not changed. Look at the sheet Trees.`,
  );
}

export async function findPlotRow(host: WorkbookHost, plot: string): Promise<number> {
  const saved = plotsOf(await host.readTable(PLOTS)).find((one) => samePlot(one.name, plot));
  if (saved) return saved.row;
  throw new HostProblem(
    "refused",
    `Point ${plot} is no longer in the Plots table. Add it on the sheet Points, then try again.`,
  );
}
