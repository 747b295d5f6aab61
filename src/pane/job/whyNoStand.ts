import { countedPlots, type Job } from "./job";
import type { StandAnswers } from "./readStand";
import { takesStandAway } from "./takesStandAway";

/**
 * Why the stand has no figures. One tree that the tables do not cover takes them all away, and then its own sentence is
 * the reason; a lack of points is named only where points are lacking.
 */
export function whyNoStand(job: Job, { lacking, error }: Pick<StandAnswers, "lacking" | "error">): string {
  if (error !== "#N/A" && error !== "#VALUE!") return lacking;
  const uncovered = job.trees.find((tree) => tree.volume === null && takesStandAway(tree));
  if (uncovered) return `Point ${uncovered.plot}, tree in row ${uncovered.row + 1}: ${uncovered.check}`;
  if (error === "#N/A" && countedPlots(job).length > 1) {
    return "The sheet Stand shows #N/A. Select that cell and open its flag to read why.";
  }
  return lacking;
}
