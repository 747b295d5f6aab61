import { Problem } from "../../core/basis/problem";
import { acres, percent } from "../../core/basis/units";
import { gridSpacing } from "../../core/cruise/gridSpacing";
import { fullTally } from "../../core/cruise/methods/fullTally";
import { pointSample } from "../../core/cruise/methods/pointSample";
import { plotsNeeded } from "../../core/cruise/plotsNeeded";
import { usualSettings, type Settings } from "../../workbook/settings";
import { short } from "../figures";
import { mixtures, type PlanForm } from "./planForm";

type Field =
  | "acres"
  | "acresMargin"
  | "variation"
  | "target"
  | "confidence"
  | "expected"
  | "gauge"
  | "plotSize"
  | "points"
  | "formClass";

/** What the form amounts to: figures where they can be worked out, a sentence beside each box where they cannot. */
export interface PlanReading {
  readonly problems: Readonly<Partial<Record<Field, string>>>;
  /** [ac] */
  readonly tract: number | undefined;
  /** Points that the wanted margin asks for. */
  readonly needed: number | undefined;
  /** Points that will be laid out. */
  readonly points: number | undefined;
  /** [ft] */
  readonly spacing: number | undefined;
  readonly settings: Settings | undefined;
}

const bounds: Readonly<Record<Field, readonly [what: string, low: number, high: number, unit: string]>> = {
  acres: ["Acres", 0.1, 100_000, "acres"],
  acresMargin: ["The margin of the acres", 0, 50_000, "acres"],
  variation: ["The coefficient of variation", 1, 300, "percent"],
  target: ["The margin", 1, 100, "percent"],
  confidence: ["The confidence", 50, 99.9, "percent"],
  expected: ["Basal area", 1, 500, "square feet per acre"],
  gauge: ["The basal area factor", 0.5, 200, "square feet per acre"],
  plotSize: ["The size", 0.001, 100, "acres"],
  points: ["The number of points", 2, 1000, "points"],
  formClass: ["The form class", 65, 90, "percent"],
};

/** Most points that Build lays out at once when a small margin asks for more. */
const MOST_POINTS = bounds.points[2];

/** What the variation is taken to be: as typed, or as measured on the points so far, or as the mixture has it. [%] */
export const variationOf = ({ variation, mixture }: PlanForm, measured: number | undefined): string => {
  if (variation.trim() !== "") return variation;
  const guess = (mixtures.find(({ id }) => id === mixture) ?? mixtures[1]).variation;
  return short(measured === undefined ? guess : Number(measured.toFixed(1)));
};

export function readPlan(typedForm: PlanForm, measured?: number): PlanReading {
  const form = { ...typedForm, variation: variationOf(typedForm, measured) };
  const problems: Partial<Record<Field, string>> = {};
  const read = (field: Field): number | undefined => {
    const typed = form[field].trim();
    const [what, low, high, unit] = bounds[field];
    if (typed === "" && (field === "acres" || field === "points")) return undefined;
    const value = typed === "" ? Number.NaN : Number(typed);
    if (value >= low && value <= high) return value;
    problems[field] = Number.isNaN(value)
      ? `${what} needs a number in ${unit}${typed === "" ? "" : `, but you typed "${typed}"`}.`
      : `${what} should be between ${low} and ${high} ${unit}. You have ${typed}.`;
    return undefined;
  };
  const tract = read("acres");
  const [acresMargin, variation, target, confidence, gauge, formClass, asked] = (
    ["acresMargin", "variation", "target", "confidence", "gauge", "formClass", "points"] as const
  ).map(read);
  read("expected");
  const plotSize = read("plotSize");
  const size = sizeFor(form.method, gauge, plotSize, tract);
  if (asked !== undefined && !Number.isInteger(asked)) problems.points = "The number of points should be whole.";

  const needed = figure(() =>
    variation && target && confidence
      ? plotsNeeded(percent(variation), percent(target), percent(confidence))
      : undefined,
  );
  const follows = form.points.trim() === "" && needed !== undefined ? Math.min(needed, MOST_POINTS) : asked;
  const points = problems.points ? undefined : follows;
  const spacing = figure(() => (tract && points ? gridSpacing(acres(tract), points) : undefined));
  const settings =
    Object.keys(problems).length > 0 || !tract || !points || !size || !target || !confidence || !formClass
      ? undefined
      : {
          ...usualSettings,
          stand: form.stand.trim() || usualSettings.stand,
          acres: tract,
          acresMargin: acresMargin ?? 0,
          method: form.method,
          size,
          confidence,
          target,
          rule: form.rule,
          scale: { ...usualSettings.scale, rule: form.rule },
          formClass,
        };
  return { problems, tract, needed, points, spacing, settings };
}

/** The gauge of points, the acres of one plot or strip, or those of the tract where every tree is tallied. */
function sizeFor(method: string, gauge: number | undefined, plot: number | undefined, tract: number | undefined) {
  if (method === pointSample.title) return gauge;
  return method === fullTally.title ? tract : plot;
}

/** A figure, or undefined when the numbers do not allow one; the boxes themselves say why. */
function figure<T>(work: () => T | undefined): T | undefined {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof Problem) return undefined;
    throw problem;
  }
}
