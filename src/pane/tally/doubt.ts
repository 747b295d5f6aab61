import { checkTree } from "../../core/cruise/checkTree";
import { NameList } from "../../core/cruise/nameList";
import { inches } from "../../core/basis/units";
import type { Job } from "../job/job";
import type { TallyTree } from "./tallyTree";

/** What the workbook will say of a tree in its Check column, before it is saved; "" when nothing looks wrong. */
export function doubt(tree: TallyTree, plot: string, job: Job): string {
  return checkTree(
    { plot, species: tree.species, dbh: tree.dbh, logs: tree.logs ?? undefined },
    {
      plots: new NameList(job.plots.map((one) => one.name)),
      species: new NameList(job.species.map(({ code }) => code)),
      leastDbh: inches(job.minDbh),
      mostDbh: inches(job.maxDbh),
      logsMeasured: job.trees.some((one) => one.tree.logs !== null),
    },
  );
}
