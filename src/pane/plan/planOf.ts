import { pointSample } from "../../core/cruise/methods/pointSample";
import type { Job } from "../job/job";
import { speciesLine } from "./speciesList";
import { usualPlan, type PlanForm } from "./planForm";

/** The plan of the cruise that is open, so that the view shows what was planned and a new one starts from there. */
export const planOf = (job: Job): PlanForm => ({
  ...usualPlan,
  stand: job.stand,
  acres: job.acres === null ? "" : String(job.acres),
  acresMargin: String(job.acresMargin),
  target: String(job.target),
  confidence: String(job.confidence),
  method: job.method,
  ...(job.method === pointSample.title ? { gauge: String(job.size) } : { plotSize: String(job.size) }),
  points: String(job.plots.length),
  rule: job.rule || usualPlan.rule,
  formClass: String(job.formClass),
  species: job.species.map(speciesLine).join("\n") || usualPlan.species,
});
