import type { BestPlan } from "../../core/sawing/sawPlan";
import type { UnitSystem } from "./unitSystem";

/** What any plan could give, how much of it this one does, and what it is the best of. */
export function boundRow({ most, worth, priced, grid, guarantee }: BestPlan, { diameter }: UnitSystem): unknown[] {
  const goal = priced ? (most.value ?? 0) : most.boardFeet;
  return [
    most.boardFeet,
    most.value ?? "",
    goal > 0 ? (100 * worth) / goal : "",
    grid === undefined ? "any" : grid * diameter.perOurs,
    guarantee,
  ];
}
