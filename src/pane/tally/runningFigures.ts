import { chosen } from "../../core/basis/choices";
import { Problem } from "../../core/basis/problem";
import { acres, inches, squareFeetPerAcre } from "../../core/basis/units";
import { samplingMethods } from "../../core/cruise/methods";
import { basalArea } from "../../core/tree/basalArea";
import { samePlot, type Job } from "../job/job";
import type { TallyTree } from "./tallyTree";

export interface RunningFigures {
  readonly trees: number;
  /** Of this point alone [ft2/ac]; undefined when Setup does not say how trees were picked. */
  readonly basalArea: number | undefined;
}

/** Trees and basal area of one point while it is being tallied, by its own gauge or size where it has one. Trees without a diameter add nothing. */
export function runningFigures(trees: readonly TallyTree[], job: Job, plot = ""): RunningFigures {
  const count = trees.reduce((sum, tree) => sum + tree.count, 0);
  try {
    return { trees: count, basalArea: basalAreaPerAcre(trees, job, plot) };
  } catch (problem) {
    if (problem instanceof Problem) return { trees: count, basalArea: undefined };
    throw problem;
  }
}

function basalAreaPerAcre(
  trees: readonly TallyTree[],
  { method: named, size: usual, plots }: Job,
  plot: string,
): number {
  const given = plots.find(({ name }) => samePlot(name, plot))?.size ?? usual;
  const method = chosen("Method", named, samplingMethods);
  const size = method.size.kind === "area" ? acres(given) : squareFeetPerAcre(given);
  const measured = trees.filter(({ dbh }) => dbh > 0).map((tree) => ({ ...tree, dbh: inches(tree.dbh) }));
  return measured.reduce((sum, { dbh, count }) => sum + count * method.treesPerAcre(dbh, size) * basalArea(dbh), 0);
}
