import { chosen } from "../core/basis/choices";
import { InvalidInput } from "../core/basis/problem";
import { answered, spilled } from "./shell/answers";
import { oneText } from "./shell/readings";
import { workings } from "./shell/working";

/**
 * Functions that can set down their working.
 * @customenum {string}
 */
export enum WorkingName {
  /** Board feet in a log, under a log rule */
  logScale = "LOGSCALE",
  /** Board feet in a log, by a buyer's card */
  cardScale = "CARDSCALE",
  /** Cubic volume of a log */
  logCubic = "LOGCUBIC",
  /** Board feet in a board */
  boardFeet = "BOARDFEET",
  /** Thickness at which to set the saw */
  targetThickness = "TARGETTHICKNESS",
  /** Weight of lumber */
  lumberWeight = "LUMBERWEIGHT",
  /** Best-paying way to cut a stem */
  buckPlan = "BUCKPLAN",
}

/**
 * How a function comes to its answer for one log, board, load or stem, step by step, so that it can be checked by hand.
 * @customfunction WORKING
 * @param function_name LOGSCALE, CARDSCALE, LOGCUBIC, BOARDFEET, TARGETTHICKNESS, LUMBERWEIGHT or BUCKPLAN.
 * @param given Arguments of that function, in its own order and its own units, each a single value but for a card, products and flaws.
 * @returns A table: step in figures, its meaning, the number it comes to, the unit; the last number is the function's answer, or what its plan brings.
 */
export function working(function_name: WorkingName, given: any[][][]): any[][] {
  return answered(() => {
    const asked = chosen("Function", oneText(function_name, "Function"), workings);
    const args: readonly unknown[] = Array.isArray(given) ? given : [];
    if (args.length > asked.takes) {
      throw new InvalidInput(
        `${asked.title} takes up to ${asked.takes} arguments after its name. You have ${args.length}.`,
      );
    }
    const rows = asked.steps(args).map((step) => [step.sum, step.meaning, step.value, step.unit]);
    return spilled(["Step", "Meaning", "Number", "Unit"], rows);
  });
}
