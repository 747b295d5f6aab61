import { chosen } from "../../src/core/basis/choices";
import { acres, inches, percent } from "../../src/core/basis/units";
import { clusterEstimate } from "../../src/core/cruise/clusters";
import { densityMeasures } from "../../src/core/cruise/densities";
import { doubleSampleRatio } from "../../src/core/cruise/doubleSampling";
import { allocations, plotsByStratum } from "../../src/core/cruise/plotsByStratum";
import { ratioOfMeans } from "../../src/core/cruise/ratioOfMeans";
import { standDensity } from "../../src/core/cruise/standDensity";
import { stratifiedEstimate } from "../../src/core/cruise/stratified";
import { basalArea } from "../../src/core/tree/basalArea";
import { plotsWith } from "../support/plotsWith";
import { numberIn, published, type PublishedRow } from "../support/published";
import { groupedBy, surveyAnswer, surveySamples } from "../support/surveyAnswers";
import type { Comparison } from "./comparison";
import { ofAnswers } from "./ofTable";

const at95 = percent(95);

/** Strata, clusters, two phases, allocations and densities. */
export const designComparisons = (): readonly Comparison[] => [...parts(), ...planned(), ...crowded(), ...survey()];

const groupsOf = (path: string, column: string) => groupedBy(published(path).rows, column);

/** Strata, clusters and two phases of Priest River, and the printed strata. */
function parts(): Comparison[] {
  const points = "cruise/priest-river-points.csv";
  const path = "cruise/priest-river-answers.csv";
  const volumes = (rows: readonly PublishedRow[]) => rows.map((row) => numberIn(row, "volume"));
  const strata = groupsOf(points, "stratum").map((rows, at) => ({
    name: String(at),
    acres: acres(1),
    plots: volumes(rows),
  }));
  const stratified = stratifiedEstimate(strata, at95);
  const clustered = clusterEstimate(groupsOf(points, "cluster").map(volumes), at95);
  const { rows } = published(points);
  const measured = rows
    .filter((row) => row.point === "1")
    .map((row) => ({ quick: numberIn(row, "basal area"), full: numberIn(row, "volume") }));
  const twoPhases = doubleSampleRatio({ quick: rows.map((row) => numberIn(row, "basal area")), measured }, at95);
  const recalled = stratifiedEstimate(
    published("cruise/freese-strata.csv").rows.map((row) => ({
      name: row.stratum ?? "",
      acres: acres(numberIn(row, "units")),
      plots: plotsWith(numberIn(row, "plots"), numberIn(row, "mean"), numberIn(row, "variance")),
    })),
    at95,
  );
  return [
    ...ofAnswers(path, "Priest River", "ft3/12 per ac", {
      "volume standard error by strata": stratified.standardError,
      "volume by that ratio": twoPhases.value,
      "standard error by that ratio": twoPhases.standardError,
    }),
    ...ofAnswers(path, "Priest River", "%", { "volume margin percent by clusters": clustered.marginPercent ?? NaN }),
    ...ofAnswers("cruise/freese-strata-answers.csv", "Three types of forest", "units", {
      mean: recalled.combined.value,
    }),
  ];
}

/** Allocations that authors worked out. */
function planned(): Comparison[] {
  return groupsOf("cruise/allocations.csv", "example").map((rows) => {
    const first = rows[0] ?? {};
    const strata = rows.map((row) => ({
      acres: acres(numberIn(row, "acres")),
      mean: numberIn(row, "mean"),
      variation: percent(numberIn(row, "cv")),
    }));
    const ours = plotsByStratum(strata, numberIn(first, "total"), chosen("Allocation", first.allocation, allocations));
    return {
      subject: `Plots by stratum, example ${first.example}`,
      source: first.where ?? "",
      standing: first.standing ?? "",
      unit: "plots",
      printedTo: 1,
      pairs: rows.flatMap((row, at) =>
        row.standing === first.standing ? [{ printed: numberIn(row, "plots"), ours: ours[at] ?? NaN }] : [],
      ),
    };
  });
}

/** Densities of stands of one diameter. */
function crowded(): Comparison[] {
  const { source, standing, printedTo, rows } = published("cruise/stand-densities.csv");
  return rows.map((row) => {
    const dbh = inches(numberIn(row, "quadratic mean diameter"));
    const trees = row.trees ? numberIn(row, "trees") : numberIn(row, "basal area") / basalArea(dbh);
    const ours = standDensity({ dbh: [dbh], trees: [trees] }, chosen("Measure", row.measure, densityMeasures));
    return {
      subject: `Stand density: ${row.measure}`,
      source: `${source}: ${row.where}`,
      standing,
      unit: "",
      printedTo,
      pairs: [{ printed: numberIn(row, "value"), ours }],
    };
  });
}

/** Random stratified, clustered and strip samples, as the package survey works them out. */
function survey(): Comparison[] {
  const { source, standing, printedTo } = published("cruise/survey-answers.csv");
  const standardErrors = (design: string, path: string, ours: (rows: readonly PublishedRow[]) => number) => ({
    subject: `Standard error of random ${design}`,
    source,
    standing,
    unit: "",
    printedTo,
    pairs: surveySamples(path).map(([sample, rows]) => ({
      printed: surveyAnswer(design, sample)("standard error"),
      ours: ours(rows),
    })),
  });
  const values = (rows: readonly PublishedRow[]) => rows.map((row) => numberIn(row, "value"));
  return [
    standardErrors("strata", "cruise/survey-strata.csv", (rows) => {
      const strata = groupedBy(rows, "stratum").map((own, at) => ({
        name: String(at),
        acres: acres(numberIn(own[0] ?? {}, "acres")),
        plots: values(own),
      }));
      return stratifiedEstimate(strata, at95).standardError;
    }),
    standardErrors("strips", "cruise/survey-strips.csv", (rows) => {
      const column = (name: string) => rows.map((row) => numberIn(row, name));
      return ratioOfMeans(column("trees"), column("acres")).standardError;
    }),
    standardErrors("clusters", "cruise/survey-clusters.csv", (rows) => {
      const clusters = groupedBy(rows, "cluster").map(values);
      return ratioOfMeans(
        clusters.map((plots) => plots.reduce((sum, one) => sum + one, 0)),
        clusters.map((plots) => plots.length),
      ).standardError;
    }),
  ];
}
