import { checkHeight } from "../../core/cruise/checkHeight";
import { checkTree } from "../../core/cruise/checkTree";
import { NameList } from "../../core/cruise/nameList";
import { Problem } from "../../core/basis/problem";
import { inches, percent } from "../../core/basis/units";
import { logRule } from "../../core/log/findLogRule";
import { treeVolume } from "../../core/tree/treeVolume";
import type { Job } from "../job/job";
import { nearest } from "./notListed";
import type { TallyTree } from "./tallyTree";

/**
 * What the workbook will say of a tree in its Check column, before it is saved; "" when nothing looks wrong. It warns and
 * never keeps a tree from being saved.
 */
export function doubt(tree: TallyTree, plot: string, job: Job): string {
  const first = odd(tree, plot, job);
  if (tree.dbh > job.maxDbh) return first; // once that is mended, the tables may well cover it
  return [first, uncovered(tree, job)].filter((sentence) => sentence !== "").join(" ");
}

function odd(tree: TallyTree, plot: string, job: Job): string {
  const said = checkTree(
    { plot, species: tree.species, dbh: tree.dbh, logs: tree.logs ?? undefined },
    {
      plots: new NameList(job.plots.map((one) => one.name)),
      species: new NameList(job.species.map(({ code }) => code)),
      leastDbh: inches(job.minDbh),
      mostDbh: inches(job.maxDbh),
      logsMeasured: job.heightMeasured.logs && job.trees.some((one) => one.tree.logs !== null),
    },
  );
  const heights = { dbh: tree.dbh, logs: tree.logs ?? undefined, height: tree.height ?? undefined };
  const near = said.includes("not in your species list") ? nearest(tree.species, job.species) : "";
  if (near !== "") return `${said} ${near}`;
  return said || checkHeight(heights, job.heightMeasured);
}

/** A tree that the tables do not cover would leave the whole stand without a volume. */
function uncovered({ dbh, logs }: TallyTree, { rule, formClass }: Job): string {
  if (logs === null || logs === 0 || rule === "") return "";
  try {
    treeVolume({ dbh: inches(dbh), logs, formClass: percent(formClass) }, logRule(rule));
    return "";
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return `${problem.message} Saved so, the whole stand has no volume; without logs, the tree still counts.`;
  }
}
