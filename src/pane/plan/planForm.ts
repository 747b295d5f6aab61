import { usualSettings } from "../../workbook/settings";

/** How unlike each other the points are taken to be before any was measured. The percents are a choice of ours. */
export const mixtures = [
  { id: "even", title: "Even", variation: 25 },
  { id: "mixed", title: "Mixed", variation: 45 },
  { id: "patchy", title: "Patchy", variation: 65 },
] as const;

/** Gauges that are sold and used. [ft2/ac] */
export const gauges = [5, 10, 15, 20, 30, 40] as const;

/** Codes to start from, a choice of ours; the owner keeps what grows on his land. */
const usualSpecies = [
  "ro red oak 833",
  "wo white oak",
  "sm sugar maple",
  "rm red maple",
  "yp yellow-poplar",
  "bc black cherry",
  "hi hickory 400",
  "wa white ash",
  "ab American beech",
  "wp white pine 129",
].join("\n");

/** What is typed on the plan view, as typed. */
export interface PlanForm {
  readonly stand: string;
  readonly acres: string;
  readonly acresMargin: string;
  readonly mixture: string;
  /** "" follows how mixed the stand is, or the points themselves once there are enough. */
  readonly variation: string;
  readonly target: string;
  readonly confidence: string;
  /** What the stand is expected to hold. [ft2/ac] */
  readonly expected: string;
  readonly gauge: string;
  /** How trees are picked, by its title. */
  readonly method: string;
  /** Of one plot or strip. [ac] */
  readonly plotSize: string;
  /** Points to take; "" follows the number that the margin asks for. */
  readonly points: string;
  readonly rule: string;
  readonly formClass: string;
  /** One species a line: its code, its name, its inventory code where the name does not tell it. */
  readonly species: string;
  /** One stratum a line: name, acres, guess of what an acre holds, variation in percent. */
  readonly strata: string;
}

export const usualPlan: PlanForm = {
  stand: "",
  acres: "",
  acresMargin: "0",
  mixture: "mixed",
  variation: "",
  target: String(usualSettings.target),
  confidence: String(usualSettings.confidence),
  expected: "90",
  gauge: String(usualSettings.size),
  method: usualSettings.method,
  plotSize: "0.1",
  points: "",
  rule: usualSettings.rule,
  formClass: String(usualSettings.formClass),
  species: usualSpecies,
  strata: "",
};
