import { checkPlots, checkTrees } from "../../src/functions/checks";
import { countMeasure } from "../../src/functions/count";
import { cutByClass, cutBySpecies } from "../../src/functions/cutParts";
import { cutSummary } from "../../src/functions/cut";
import { densitySummary, importanceValue, loreysHeight } from "../../src/functions/describe";
import { checkCruise, doubleSample, systematicMargin } from "../../src/functions/designs";
import { standDensity } from "../../src/functions/density";
import { productTable } from "../../src/functions/products";
import { standTable, stockTable } from "../../src/functions/classTables";
import { qmd } from "../../src/functions/stand";
import { plotTable, speciesTable, standSummary } from "../../src/functions/standSummary";
import { clusterSummary, strataSummary } from "../../src/functions/strata";
import { ratio, type Ratio } from "./ratio";

const TREES = 100_000;
const PLOTS = 2_000;
const SPECIES = ["red oak", "white oak", "sugar maple", "black cherry", "white pine", "hemlock", "ash", "birch"];

/** Invented products: what pays best is a matter of every tree by itself, so that its table has no such aim. */
const PRODUCTS = [
  ["Sawlogs", 10, 8, 16, 2, "International 1/4", 450],
  ["Pulpwood", 4, 8, 8, 1, "Cords", 20],
];

/** Functions that judge or cut each tree, and sum nothing: their time is told, without an aim. */
const EACH_TREE: readonly string[] = ["PRODUCTTABLE", "CHECKTREES", "CHECKPLOTS"];

/**
 * Every table function over a very large cruise, against one pass that only sums two columns. The ratio is an aim for
 * STANDSUMMARY; of the others, which do more than sum, the time is.
 */
export async function standTableRatios(): Promise<readonly Ratio[]> {
  const trees = <T>(cell: (tree: number) => T) => Array.from({ length: TREES }, (_, i) => [cell(i)]);
  const plot = trees((i) => 1 + (i % PLOTS));
  const dbh = trees((i) => 10 + (i % 200) / 10);
  const volume = trees((i) => 50 + (i % 400));
  const species = trees((i) => SPECIES[i % SPECIES.length] as string);
  const take = trees((i) => (i % 3 === 0 ? "Yes" : "No"));
  const area = trees((i) => (i % 5 === 0 ? 0.5 + (i % 200) / 100 : ""));
  const measured = trees((i) => (i % 5 === 0 ? 50 + (i % 400) : ""));
  const counted = trees(() => 1);
  const plots = Array.from({ length: PLOTS }, (_, i) => [i + 1]);
  const sizes = plots.map(([one]) => [(one as number) % 2 === 0 ? 10 : 20]);
  const values = plots.map(([one]) => [(one as number) % 97]);
  const strata = plots.map(([one]) => [`stratum ${(one as number) % 8}`]);
  const names = Array.from({ length: 8 }, (_, i) => [`stratum ${i}`]);
  const block = names.map(([name], i) => [name, 10 + i]);
  const height = trees((i) => 40 + (i % 50));
  const logs = trees((i) => 1 + (i % 5) / 2);
  const listed = SPECIES.map((name) => [name]);
  const [yes, none] = ["Yes", ""].map((mark) => plots.map(() => [mark])) as [string[][], string[][]];
  const out = undefined;
  const acres = names.map((_, i) => [10 + i]);

  const onePass = () => {
    const basalArea = new Float64Array(PLOTS);
    const volumes = new Float64Array(PLOTS);
    for (let i = 0; i < TREES; i += 1) {
      const place = plot[i]![0]! - 1;
      const diameter = dbh[i]![0]!;
      basalArea[place]! += 0.005454154 * diameter * diameter;
      volumes[place]! += volume[i]![0]!;
    }
    return [basalArea, volumes];
  };
  const point = "Point" as never;
  const gauge = [[10]];
  const calls: Readonly<Record<string, () => unknown>> = {
    STANDSUMMARY: () => standSummary(plot, dbh, plots, point, gauge, volume),
    "STANDSUMMARY, a factor for each point": () => standSummary(plot, dbh, plots, point, sizes, volume),
    STANDTABLE: () => standTable(plot, species, dbh, plots, point, gauge),
    STOCKTABLE: () => stockTable(plot, species, dbh, volume, plots, point, gauge),
    SPECIESTABLE: () => speciesTable(plot, species, dbh, volume, plots, point, gauge),
    PLOTTABLE: () => plotTable(plot, dbh, volume, plots, point, gauge),
    CUTSUMMARY: () => cutSummary(plot, dbh, take, plots, point, gauge, volume),
    "CUTSUMMARY, 8 strata": () => cutSummary(plot, dbh, take, plots, point, gauge, volume, out, strata, block),
    CUTBYCLASS: () => cutByClass(plot, dbh, take, plots, point, gauge, volume),
    CUTBYSPECIES: () => cutBySpecies(plot, species, dbh, take, plots, point, gauge, volume),
    DENSITYSUMMARY: () => densitySummary(plot, dbh, take, plots, point, gauge),
    IMPORTANCEVALUE: () => importanceValue(plot, species, dbh, plots, point, gauge),
    LOREYSHEIGHT: () => loreysHeight(height, dbh),
    "STANDSUMMARY, 8 strata": () => standSummary(plot, dbh, plots, point, gauge, volume, out, 95, strata, block),
    "SPECIESTABLE, 8 strata": () =>
      speciesTable(plot, species, dbh, volume, plots, point, gauge, out, 95, strata, block),
    COUNTMEASURE: () => countMeasure(plot, counted, plots, gauge, measured, area),
    QMD: () => qmd(dbh, counted),
    STANDDENSITY: () => standDensity(counted, dbh),
    PRODUCTTABLE: () => productTable(plot, species, dbh, [[""]], logs, PRODUCTS, plots, "Point", gauge, "Logs"),
    CHECKTREES: () => checkTrees(plot, species, dbh, logs, plots, listed, out, out, volume),
    CHECKPLOTS: () => checkPlots(plot, species, dbh, logs, plots, yes, none),
    "STRATASUMMARY, 2,000 plots": () => strataSummary(strata, values, names, acres),
    "CLUSTERSUMMARY, 2,000 plots": () => clusterSummary(strata, values),
    "SYSTEMATICMARGIN, 2,000 plots": () => systematicMargin(values),
    "DOUBLESAMPLE, 2,000 plots": () => doubleSample(values, values, values),
    "CHECKCRUISE, 2,000 plots": () => checkCruise(values, values),
  };
  const ratios: Ratio[] = [];
  for (const [name, call] of Object.entries(calls)) {
    const what = `${name}${name.includes("plots") ? "" : ", 100,000 trees in 2,000 plots"}, against one pass of summation`;
    const aim = EACH_TREE.includes(name) ? "none" : name === "STANDSUMMARY" ? "10, and 40 ms" : "40 ms";
    ratios.push(await ratio(what, aim, call, onePass));
  }
  return ratios;
}
