import { inches, percent } from "../core/basis/units";
import { dry, lumberKinds, seasonings, softwood } from "../core/lumber/dressedSize";
import { targetThickness as thicknessToSaw } from "../core/lumber/targetThickness";
import { answered, eachCell } from "./shell/answers";
import { boundsIn, chosenOr, measuredIn } from "./shell/measuredIn";
import { measured, optionalNumber } from "./shell/readings";
import { quarterScale } from "./shell/quarterScale";
import { unitSystem } from "./shell/unitSystem";

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum BoardSizeUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * Whether lumber was dressed dry or green.
 * @customenum {string}
 */
export enum SeasoningName {
  /** 19 percent moisture or less */
  dry = "Dry",
  /** Unseasoned */
  green = "Green",
}

/**
 * Kinds of lumber that have printed dressed sizes.
 * @customenum {string}
 */
export enum LumberKindName {
  /** Boards and dimension: a thickness under 5 in, or a width up to 16 in */
  softwood = "Softwood",
  /** Timbers: 5 in or more each way */
  softwoodTimber = "Softwood timber",
  /** Rough thickness, surfaced on two sides */
  hardwood = "Hardwood",
}

/**
 * Dressed size of one face of a piece of lumber, as the standards print it: 1.5 for a 2, 3.5 for a 4.
 * @customfunction DRESSEDSIZE
 * @param nominal Nominal thickness or width of a softwood face, or rough thickness of a hardwood board, in inches, or as a text in quarters such as "5/4".
 * @param [seasoning] "Dry" (19 percent moisture or less) or "Green". Left out: Dry.
 * @param [kind] "Softwood" (a thickness under 5 inches or a width), "Softwood timber" (5 inches or more each way) or "Hardwood" (surfaced on two sides). Left out: Softwood.
 * @returns Least dressed size, in inches, in the shape that was given.
 */
export function dressedSize(nominal: any[][], seasoning?: SeasoningName, kind?: LumberKindName): any[][] {
  return answered(() => {
    const dressedWhen = chosenOr("Seasoning", seasoning, seasonings, dry);
    const lumber = chosenOr("Kind", kind, lumberKinds, softwood);
    return eachCell(
      {
        nominal: measured(quarterScale(nominal, unitSystem(null)), "Nominal size", inches, {
          unit: "in",
          low: 0.1,
          high: 60,
        }),
      },
      (face) => lumber.dressed(face.nominal, dressedWhen),
    );
  });
}

/**
 * Thickness at which to set the saw for a rough green board: finished thickness and planing before shrinkage, and an allowance for uneven sawing.
 * @customfunction TARGETTHICKNESS
 * @param finished Thickness of the finished board, in inches (cm).
 * @param shrink_pct Shrinkage in thickness from green to finished, in percent: 4.5 for 4.5 percent; 0 if it is used green.
 * @param [planing] Taken off in planing, both faces together, in inches (cm). Left out: 0.
 * @param [saw_variation] Added for uneven sawing, in inches (cm): the standard deviation of thickness times 1.65 for 5 percent thin spots, 3.09 for none. Left out: 0.
 * @param [units] "imperial" (inches) or "metric" (cm). Left out: imperial.
 * @returns Target thickness, in inches (cm), in the shape that was given.
 */
export function targetThickness(
  finished: any[][],
  shrink_pct: any[][],
  planing?: any[][],
  saw_variation?: any[][],
  units?: BoardSizeUnits,
): any[][] {
  return answered(() => {
    const { diameter: across } = unitSystem(units);
    const allowance = (given: unknown, what: string) =>
      optionalNumber(given, what, (value) => inches(value / across.perOurs), boundsIn(across, 0, 2));
    return eachCell(
      {
        finished: measuredIn(finished, "Finished thickness", across, inches, 0.01, 60),
        shrinkage: optionalNumber(shrink_pct, "Shrinkage", percent, { unit: "%", low: 0, high: 50 }),
        planing: allowance(planing, "Planing"),
        variation: allowance(saw_variation, "Saw variation"),
      },
      (board) => thicknessToSaw(board) * across.perOurs,
    );
  });
}
