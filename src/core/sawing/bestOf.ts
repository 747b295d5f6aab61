import { OutOfRange } from "../basis/problem";
import { HAIR } from "./filling/hair";
import type { SawingPattern, SawJob, SawPlan } from "./sawingPattern";

/**
 * Of several ways to saw a log the plan that is worth most, of equals the first.
 *
 * @throws OutOfRange with the reason of the first way, when none has a plan
 */
export function bestOf(ways: readonly ((toBeat?: number) => SawPlan)[]): SawPlan {
  let best: SawPlan | undefined;
  let reason: OutOfRange | undefined;
  for (const way of ways) {
    try {
      const plan: SawPlan = way(best?.worth);
      if (!best || plan.worth > best.worth * (1 + HAIR)) best = plan;
    } catch (problem) {
      if (!(problem instanceof OutOfRange)) throw problem;
      reason ??= problem;
    }
  }
  if (!best) throw reason as OutOfRange;
  return best;
}

/** By whichever of several patterns; each need only beat the ones before it. */
export const bestOfPatterns = (patterns: readonly SawingPattern[], job: SawJob): SawPlan =>
  bestOf(
    patterns.map(
      (pattern) =>
        (toBeat = job.toBeat) =>
          pattern.plan(toBeat === undefined ? job : { ...job, toBeat }),
    ),
  );
