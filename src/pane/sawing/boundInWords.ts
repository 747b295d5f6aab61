import { onTheScale } from "../../core/sawing/scale";
import { figure } from "../figures";
import type { SawBound } from "../job/readSawing";

/** How good a plan is: what it is the best of, on which settings, and how near it comes to what area and kerf allow. */
export function boundInWords({ most, gives, settings, bestOf }: SawBound, priced: boolean, unit: string): string {
  const on = typeof settings === "number" ? `Settings tried: every ${stepSaid(settings)} ${unit}.` : "At any setting.";
  const goal = priced ? "dollars" : "board feet";
  return (
    `${bestOf} ${on} By area and kerf no plan of this log could give over ${figure(most)} bf; ` +
    `this one gives ${figure(gives, 1)} % of the ${goal} that area and kerf allow.`
  );
}

/** "1/32" where it is a fraction of one, else a number. */
function stepSaid(step: number): string {
  const said = onTheScale(step, step);
  return said.includes("/") ? said : String(Number(step.toFixed(4)));
}
