import { Problem } from "../../core/basis/problem";
import { acres, percent } from "../../core/basis/units";
import { best, plotsByStratum, type PlannedStratum } from "../../core/cruise/plotsByStratum";
import type { TableRow } from "../../workbook/plan";
import { stratum } from "../../workbook/tables";

export interface NamedStratum extends PlannedStratum {
  readonly name: string;
}

export interface PlanStrata {
  readonly strata: readonly NamedStratum[];
  /** What is wrong with the first line that cannot be read; "" when all can. */
  readonly problem: string;
}

/** Reads strata, one a line: name, acres, a guess of what an acre holds, and how much its points differ in percent. */
export function readStrata(text: string): PlanStrata {
  const strata: NamedStratum[] = [];
  for (const line of text.split("\n").filter((one) => one.trim() !== "")) {
    const [, name = "", ...numbers] =
      /^\s*(.+?)[\s,;]+([\d.]+)[\s,;]+([\d.]+)[\s,;]+([\d.]+)\s*%?\s*$/.exec(line) ?? [];
    const [size = 0, mean = 0, variation = 0] = numbers.map(Number);
    if (!(size > 0 && mean > 0 && variation > 0 && variation <= 300))
      return {
        strata: [],
        problem: `"${line.trim().slice(0, 40)}" needs a name, then acres, guess and CV, such as: Oak 20 9000 40.`,
      };
    strata.push({ name: name.trim(), acres: acres(size), mean, variation: percent(variation) });
  }
  return { strata, problem: "" };
}

/** The points of the plan shared out for the least margin; none while they are too few, and then the reason. */
export function sharedOut({ strata }: PlanStrata, points: number | undefined): readonly number[] | string {
  if (strata.length === 0 || points === undefined) return [];
  try {
    return plotsByStratum(strata, points, best);
  } catch (problem) {
    if (problem instanceof Problem) return problem.message;
    throw problem;
  }
}

/** The same strata as rows of the sheet Design. */
export const strataRows = ({ strata }: PlanStrata): readonly TableRow[] =>
  strata.map(({ name, acres: size, mean, variation }) => ({
    [stratum.stratum]: name,
    [stratum.acres]: size,
    [stratum.guess]: mean,
    [stratum.variation]: variation,
  }));
