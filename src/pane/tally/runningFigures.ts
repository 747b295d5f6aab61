import { chosen } from "../../core/basis/choices";
import { acres, inches, squareFeetPerAcre } from "../../core/basis/units";
import { samplingMethods } from "../../core/cruise/methods";
import { basalArea } from "../../core/tree/basalArea";
import type { Job } from "../job/job";
import type { TallyTree } from "./tallyTree";

export interface RunningFigures {
  readonly trees: number;
  /** Of this point alone. [ft2/ac] */
  readonly basalArea: number;
}

/** Trees and basal area of one point while it is being tallied. Trees without a diameter add nothing. */
export function runningFigures(trees: readonly TallyTree[], job: Job): RunningFigures {
  const method = chosen("Method", job.method, samplingMethods);
  const size = method.size.kind === "area" ? acres(job.size) : squareFeetPerAcre(job.size);
  let count = 0;
  let area = 0;
  for (const tree of trees) {
    count += tree.count;
    if (tree.dbh > 0) area += tree.count * method.treesPerAcre(inches(tree.dbh), size) * basalArea(inches(tree.dbh));
  }
  return { trees: count, basalArea: area };
}
