import quantile from "@stdlib/stats-base-dists-t-quantile";
import { mean, sampleVariance } from "../../src/core/basis/statistics";
import { acres, inches, percent, squareFeetPerAcre } from "../../src/core/basis/units";
import { classTable } from "../../src/core/cruise/classTable";
import { estimate } from "../../src/core/cruise/estimate";
import { limitingDistance } from "../../src/core/cruise/limitingDistance";
import { fixedPlots } from "../../src/core/cruise/methods/fixedPlots";
import { pointSample } from "../../src/core/cruise/methods/pointSample";
import { plotRadius } from "../../src/core/cruise/plotRadius";
import { plotsNeeded } from "../../src/core/cruise/plotsNeeded";
import { plotTotals } from "../../src/core/cruise/plotTotals";
import { quadraticMeanDiameterOf } from "../../src/core/cruise/quadraticMeanDiameter";
import { basalArea } from "../../src/core/tree/basalArea";
import { answersOf } from "../support/answers";
import { fourPointLines, pointCruise } from "../support/cruises";
import { numberIn, published, type PublishedRow } from "../support/published";
import type { Comparison } from "./comparison";
import { designComparisons } from "./cruiseDesigns";
import { ofAnswers, ofTable } from "./ofTable";

const at95 = percent(95);

/** What the cruise is held against, table by table. */
export function cruiseComparisons(): readonly Comparison[] {
  return [
    ...pointSampleTable(),
    ofTable("cruise/tree-factors.csv", "Trees per acre of one tree, BAF 10", "trees/ac", "trees", (row) =>
      pointSample.treesPerAcre(inches(numberIn(row, "dbh")), squareFeetPerAcre(10)),
    ),
    ofTable("cruise/fixed-plot.csv", "Basal area of a tree", "ft2", "basal area", (row) =>
      basalArea(inches(numberIn(row, "dbh"))),
    ),
    ofTable(
      "cruise/fixed-plot.csv",
      "Trees per acre of one tree, plot of 1/5 ac",
      "trees/ac",
      "trees",
      (row) => fixedPlots.treesPerAcre(inches(numberIn(row, "dbh")), acres(0.2)),
      0.1,
    ),
    levelPlotRadii(),
    ofTable("cruise/plots-needed.csv", "Plots needed", "plots", "plots", (row) =>
      plotsNeeded(
        percent(numberIn(row, "variation")),
        percent(numberIn(row, "error")),
        percent(numberIn(row, "confidence")),
        row.population ? numberIn(row, "population") : undefined,
      ),
    ),
    ...freese(),
    ...fourPoints(),
    ...priestRiver(),
    ...designComparisons(),
  ];
}

/** The columns of one printed table, each with its own step. */
function pointSampleTable(): Comparison[] {
  const path = "cruise/baf10-tree-factors.csv";
  const dbh = (row: PublishedRow) => inches(numberIn(row, "dbh"));
  const baf = squareFeetPerAcre(10);
  return [
    ofTable(path, "Limiting distance, BAF 10", "ft", "radius", (row) => limitingDistance({ dbh: dbh(row), baf })),
    ofTable(
      path,
      "Trees per acre of one tree, BAF 10",
      "trees/ac",
      "trees per acre",
      (row) => pointSample.treesPerAcre(dbh(row), baf),
      0.01,
    ),
    ofTable(path, "Basal area of a tree", "ft2", "basal area", (row) => basalArea(dbh(row)), 0.001),
  ];
}

/** Radii of level plots: the first band of the printed table, whose slopes need no correction. */
function levelPlotRadii(): Comparison {
  const { source, standing, printedTo, rows } = published("cruise/slope-plot-radius.csv");
  const level = rows[0];
  if (!level) throw new Error("the table of plot radii is empty");
  const sizes = [300, 100, 50, 20, 10, 5];
  const pairs = sizes.map((part) => ({
    printed: numberIn(level, `1/${part}`),
    ours: plotRadius(acres(1 / part)),
  }));
  return { subject: "Radius of a level plot", source, standing, unit: "ft", printedTo, pairs };
}

function freese(): Comparison[] {
  const values = published("cruise/freese-simple-random-sample.csv").rows.map((row) => numberIn(row, "value"));
  const standardError = estimate(values, at95).margin / quantile(0.975, values.length - 1);
  return ofAnswers("cruise/freese-answers.csv", "Simple random sample", "units", {
    mean: mean(values),
    variance: sampleVariance(values),
    "standard error with correction": standardError * Math.sqrt(1 - 20 / 100),
  });
}

function fourPoints(): Comparison[] {
  const cruise = pointCruise(10, 4, fourPointLines);
  const totals = plotTotals(cruise);
  const trees = estimate(totals.trees, at95);
  const { classes, amounts } = classTable(
    cruise,
    fourPointLines.map(() => 0),
    1,
    2,
    "trees",
  );
  const path = "cruise/constructed-four-points-answers.csv";
  return [
    ...ofAnswers(path, "Cruise of 4 points", "trees/ac", {
      trees: trees.value,
      "trees low": trees.low,
      "trees high": trees.high,
    }),
    ...ofAnswers(path, "Cruise of 4 points", "in", {
      "quadratic mean diameter": quadraticMeanDiameterOf(totals) ?? NaN,
    }),
    {
      subject: "Cruise of 4 points: stand table",
      source: published(path).source,
      standing: published(path).standing,
      unit: "trees/ac",
      printedTo: 0.0001,
      pairs: classes.map((one, at) => ({
        printed: answersOf(path)(`class ${2 * one}`).printed,
        ours: amounts[at]?.[0] ?? NaN,
      })),
    },
  ];
}

function priestRiver(): Comparison[] {
  const { rows } = published("cruise/priest-river-points.csv");
  const of = (quantity: string) =>
    estimate(
      rows.map((row) => numberIn(row, quantity)),
      at95,
    );
  const path = "cruise/priest-river-answers.csv";
  return [
    ...ofAnswers(path, "Priest River", "ft2/ac", { "basal area": of("basal area").value }),
    ...ofAnswers(path, "Priest River", "trees/ac", { trees: of("trees").value }),
    ...ofAnswers(path, "Priest River", "ft3/12 per ac", { volume: of("volume").value }),
    ...ofAnswers(path, "Priest River", "%", {
      "basal area margin percent": of("basal area").marginPercent ?? NaN,
      "volume margin percent": of("volume").marginPercent ?? NaN,
    }),
  ];
}
