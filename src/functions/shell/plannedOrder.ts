import { sawPlan, type BestPlan } from "../../core/sawing/sawPlan";
import { saidIn } from "./saidIn";
import { sawOrder, type SawingArguments } from "./sawingArguments";
import { unitSystem } from "./unitSystem";

/** The cut list, the yield and the end view of a log ask for the same plan: a few plans are kept for them. */
const KEPT = 32;
const plans = new Map<string, BestPlan>();

/** The best plan for what the arguments order; undefined while the log is not measured yet. */
export function plannedOrder(given: SawingArguments): BestPlan | undefined {
  const order = sawOrder(given);
  if (!order) return undefined;
  const { pattern, say, taper, ...measures } = order;
  const key = JSON.stringify([pattern.id, taper?.id, measures]);
  const plan =
    plans.get(key) ??
    saidIn(
      unitSystem(given.units),
      sawPlan,
    )({
      ...measures,
      pattern,
      ...(taper && { taper }),
      ...(say && { say }),
    });
  plans.delete(key);
  plans.set(key, plan);
  const [oldest] = plans.keys();
  if (plans.size > KEPT && oldest !== undefined) plans.delete(oldest);
  return plan;
}
