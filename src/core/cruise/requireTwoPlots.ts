import { OutOfRange } from "../basis/problem";

/** @throws OutOfRange when there are fewer than 2 plots: one plot says nothing of how plots differ */
export function requireTwoPlots(plots: number): void {
  if (plots < 2) throw new OutOfRange(`A margin of error needs at least 2 plots. You have ${plots}.`);
}
