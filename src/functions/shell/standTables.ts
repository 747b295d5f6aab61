import { shown } from "../../core/basis/require";
import { weightedMean } from "../../core/basis/statistics";
import { percent, type Percent } from "../../core/basis/units";
import type { ClassRule } from "../../core/cruise/classRules";
import { classTable, type Amount } from "../../core/cruise/classTable";
import type { Estimate } from "../../core/cruise/estimate";
import { estimateBy } from "../../core/cruise/plotDesign";
import { partTotals, plotTotals, wholeOf, type PlotTotals } from "../../core/cruise/plotTotals";
import { estimateQuadraticMeanDiameter, quadraticMeanDiameterOf } from "../../core/cruise/quadraticMeanDiameter";
import type { SamplingMethod } from "../../core/cruise/samplingMethod";
import { asError, spilled, type Answer } from "./answers";
import { oneNumber, type Cells } from "./readings";
import { NO_SPECIES, type Tally } from "./tally";
import type { UnitSystem } from "./unitSystem";

const NO_TREES = [["No trees yet"]];
const ALL_SPECIES = "All species";

/** What stands in place of a margin when every tree was tallied: there is no sampling error, and 0 would be false. */
export const NOT_APPLICABLE = "not applicable";

/** The confidence at which a margin is stated; left out, 95 %. */
export const confidenceOf = (given: unknown): Percent =>
  percent(oneNumber(given, "Confidence", { unit: "%", low: 50, high: 99.9 }, 95));

/** Trees, basal area, mean diameter and volume of the stand, each with its margin of error. */
export function summaryTable({ cruise }: Tally, confidence: Percent, units: UnitSystem): Cells {
  const header = ["Measure", "Value", marginAt(confidence), "Margin %", "Low", "High"];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const totals = plotTotals(cruise);
  const perLand = units.perLand.perOurs;
  const line = (name: string, plots: ArrayLike<number>, factor: number) => [
    name,
    ...estimated(cruise.method, weightedMean(plots, totals.design.weight), factor, () =>
      estimateBy(totals.design, plots, confidence),
    ),
  ];
  return spilled(header, [
    line(`Trees ${units.perLand.name}`, totals.trees, perLand),
    line(`Basal area ${units.areaPerLand.name}`, totals.basalArea, units.areaPerLand.perOurs),
    [
      `Quadratic mean diameter ${units.diameter.name}`,
      ...estimated(cruise.method, quadraticMeanDiameterOf(totals), units.diameter.perOurs, () =>
        estimateQuadraticMeanDiameter(totals, confidence),
      ),
    ],
    totals.volume ? line(volumeName(units), totals.volume, perLand) : [volumeName(units)],
  ]);
}

/** Into which diameter classes trees are sorted. */
export interface ClassesBy {
  /** In the user's unit. */
  readonly width: number;
  readonly rule: ClassRule;
}

/** What a class holds, in words, for the heading over the classes. */
export const classHeading = ({ width, rule }: ClassesBy, { diameter }: UnitSystem) =>
  `DBH class ${diameter.name}; ${rule.says(width, diameter.name)}`;

/** Trees or volume by diameter class and species, with totals both ways; species by name. */
export function classesTable(tally: Tally, amount: Amount, by: ClassesBy, units: UnitSystem): Cells {
  const { width, rule } = by;
  const order = speciesByName(tally.speciesNames);
  const what = amount === "trees" ? "Trees" : "Volume";
  const header = [
    `${what} ${units.perLand.name} by ${classHeading(by, units)}`,
    ...order.map((kind) => tally.speciesNames[kind] as string),
    ALL_SPECIES,
  ];
  if (tally.cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const { classes, amounts } = classTable(
    tally.cruise,
    tally.species,
    tally.speciesNames.length,
    width / units.diameter.perOurs,
    amount,
    rule,
  );
  const rows = amounts.map((row) => order.map((kind) => (row[kind] as number) * units.perLand.perOurs));
  const columnSums = order.map((_, column) => sum(rows.map((row) => row[column] as number)));
  return spilled(header, [
    ...rows.map((row, k) => [rule.midpointOf(classes[k] as number, width), ...row, sum(row)]),
    ["All classes", ...columnSums, sum(columnSums)],
  ]);
}

/** What each species adds to the stand, the largest share first, and the whole stand in the last row. */
export function speciesTable({ cruise, species, speciesNames }: Tally, confidence: Percent, units: UnitSystem): Cells {
  const byVolume = cruise.volume !== undefined || cruise.dbh.length === 0;
  const shareOf = byVolume ? "volume" : "basal area";
  const header = ["Species", ...amountNames(units), `Share of ${shareOf} %`, `${marginAt(confidence)}, ${shareOf}`];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const shared = (totals: PlotTotals) => totals.volume ?? totals.basalArea;
  const factor = byVolume ? units.perLand.perOurs : units.areaPerLand.perOurs;
  const parts = partTotals(cruise, species, speciesNames.length);
  const whole = wholeOf(parts);
  const mean = (plots: ArrayLike<number>) => weightedMean(plots, whole.design.weight);
  const line = (name: string, totals: PlotTotals) => [
    name,
    ...amountsOf(totals, units),
    (100 * mean(shared(totals))) / mean(shared(whole)),
    estimated(cruise.method, undefined, factor, () => estimateBy(totals.design, shared(totals), confidence))[1],
  ];
  const largestFirst = speciesByName(speciesNames).sort(
    (one, other) => mean(shared(parts[other] as PlotTotals)) - mean(shared(parts[one] as PlotTotals)),
  );
  return spilled(header, [
    ...largestFirst.map((kind) => line(speciesNames[kind] as string, parts[kind] as PlotTotals)),
    line(ALL_SPECIES, whole),
  ]);
}

/** What each plot says of an acre, in the order of the plot list, plots without trees included. */
export function plotsTable({ cruise, plotCells }: Tally, units: UnitSystem): Cells {
  const header = [
    "Plot",
    "Trees tallied",
    `Trees ${units.perLand.name}`,
    `Basal area ${units.areaPerLand.name}`,
    volumeName(units),
  ];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const totals = plotTotals(cruise);
  return spilled(
    header,
    plotCells.map((plot, at) => [
      plot,
      totals.tally[at],
      (totals.trees[at] as number) * units.perLand.perOurs,
      (totals.basalArea[at] as number) * units.areaPerLand.perOurs,
      totals.volume && (totals.volume[at] as number) * units.perLand.perOurs,
    ]),
  );
}

/** Trees, basal area, mean diameter and volume on an acre, in the user's units; no trees have no mean diameter. */
export function amountsOf(totals: PlotTotals, units: UnitSystem): (number | undefined)[] {
  const { trees, basalArea, volume } = totals;
  const { weight } = totals.design;
  const diameter = quadraticMeanDiameterOf(totals);
  return [
    weightedMean(trees, weight) * units.perLand.perOurs,
    weightedMean(basalArea, weight) * units.areaPerLand.perOurs,
    diameter && diameter * units.diameter.perOurs,
    volume && weightedMean(volume, weight) * units.perLand.perOurs,
  ];
}

/** Headings of these four. */
export const amountNames = (units: UnitSystem): string[] => [
  `Trees ${units.perLand.name}`,
  `Basal area ${units.areaPerLand.name}`,
  `Quadratic mean diameter ${units.diameter.name}`,
  volumeName(units),
];

/**
 * Value, margin, percent, low and high; with a single plot the value stands and the others say what is lacking, and
 * with every tree tallied they say that a margin does not apply.
 */
export function estimated(
  { complete }: SamplingMethod,
  value: number | undefined,
  factor: number,
  work: () => Estimate | undefined,
): (Answer | undefined)[] {
  if (complete) return [value && value * factor, ...Array<string>(4).fill(NOT_APPLICABLE)];
  try {
    const found = work();
    if (!found) return [];
    return [found.value * factor, found.margin * factor, found.marginPercent, found.low * factor, found.high * factor];
  } catch (problem) {
    const lacking = asError(problem);
    return [value === undefined ? undefined : value * factor, lacking, lacking, lacking, lacking];
  }
}

/** Heading of a margin, which is worth nothing without its confidence. */
export const marginAt = (confidence: Percent) => `Margin +/- at ${shown(confidence)} %`;
const volumeName = (units: UnitSystem) => `Volume ${units.perLand.name}`;
const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

/** Numbers of the species in the order of their names; trees without a species come last. */
export const speciesByName = (names: readonly string[]) =>
  names
    .map((name, kind) => ({
      kind,
      key: name === NO_SPECIES ? "\uffff" : name.toLowerCase(),
    }))
    .sort((one, other) => (one.key < other.key ? -1 : one.key > other.key ? 1 : 0))
    .map(({ kind }) => kind);
