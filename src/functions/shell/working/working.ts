import { InvalidInput } from "../../../core/basis/problem";
import type { Choice } from "../../../core/basis/choices";
import { sum, type Step } from "../../../core/basis/step";
import type { FunctionName } from "../../names";
import { single } from "../measuredIn";
import type { Reading } from "../readings";
import type { Unit } from "../unitSystem";

/** A function of a cell that can set down how it comes to its answer. */
export interface Working extends Choice {
  readonly title: FunctionName;
  /** How many arguments the function takes. */
  readonly takes: number;
  /**
   * The steps for one log, board, load or stem: the function's own arguments, each a single value.
   * @throws InvalidInput and OutOfRange as the function itself does
   */
  steps(given: readonly unknown[]): readonly Step[];
}

/** The one value of an argument. @throws InvalidInput when it is blank, or a list */
export function given<T>(reading: Reading<T>): T {
  const value = single(reading);
  if (value === undefined) throw new InvalidInput(`${reading.what} is missing, so there is nothing to work out.`);
  return value;
}

/** The step from the user's own unit into the one that the formula works in; none where they are the same. */
export function intoOurs(what: string, value: number, { perOurs }: Unit, ours: string): readonly Step[] {
  if (perOurs === 1) return [];
  return [{ sum: sum`${value * perOurs} / ${perOurs}`, meaning: `${what}, in ${ours}`, value, unit: ours }];
}

/** The step back into the user's own unit; none where they are the same. */
export function outOfOurs(steps: readonly Step[], meaning: string, { name, perOurs }: Unit): readonly Step[] {
  const last = steps.at(-1)?.value ?? NaN;
  if (perOurs === 1) return steps;
  return [...steps, { sum: sum`${last} * ${perOurs}`, meaning, value: last * perOurs, unit: name }];
}
