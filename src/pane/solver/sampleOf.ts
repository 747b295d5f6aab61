import { chosen } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { acres } from "../../core/basis/units";
import { plotWeights, type Cruise } from "../../core/cruise/cruise";
import { fixedPlots } from "../../core/cruise/methods/fixedPlots";
import { samplingMethods } from "../../core/cruise/methods";
import { NameList } from "../../core/cruise/nameList";
import { evenPlots, groupedPlots, type PlotDesign } from "../../core/cruise/plotDesign";
import { sizeByBreakpoint, sizeByDiameter, sizePerPlot, type PlotSizes } from "../../core/cruise/plotSizes";
import type { SampleSize, SamplingMethod } from "../../core/cruise/samplingMethod";
import { stratifiedPlots } from "../../core/cruise/stratifiedPlots";
import type { TreesJob, TreesSample } from "./jobs";

type Sample = Pick<Cruise, "method" | "size" | "plots" | "design">;

/**
 * The plots of a cruise as its tables read them: each with the size it has, by its stratum or its group.
 * @throws InvalidInput when a plot lies in no listed stratum, or parts of the design do not go together
 */
export function sampleOf({ method: named, sample }: TreesJob): Sample {
  const method = chosen("Method", named, samplingMethods);
  const cruise = { method, size: sizesOf(sample, method), plots: sample.sizes.length };
  const design = method.complete ? undefined : designIn(sample, cruise);
  return { ...cruise, ...(design && { design }) };
}

function sizesOf({ sizes, nested }: TreesSample, method: SamplingMethod): PlotSizes {
  if (nested.length === 0 && !method.thinTrees) return sizePerPlot(sizes);
  const steps = nested.map(({ leastDbh, size }) => ({ leastDbh, size: size as SampleSize }));
  if (!method.thinTrees) return sizeByDiameter(steps);
  if (steps.length < 2) throw new InvalidInput("Point and fixed needs two rows of nested plots or more, on Design.");
  return sizeByBreakpoint(steps, method.thinTrees);
}

function designIn({ strata, stratum, cluster, population }: TreesSample, cruise: Sample): PlotDesign | undefined {
  const covering = cruise.method === fixedPlots && population !== null ? population : Infinity;
  const hasClusters = cluster.some((name) => name !== "");
  if (hasClusters && (strata.length > 0 || covering !== Infinity || cruise.method.plotsWeigh !== "equally"))
    throw new InvalidInput("Clusters go with plots that all weigh the same, and not with strata or a population.");
  if (strata.length > 0) {
    const known = new NameList(strata.map(({ name }) => name));
    return stratifiedPlots(
      strata.map(({ name, acres: size }) => ({ name, acres: acres(size) })),
      {
        stratum: stratum.map((name) => placeIn(known, name)),
        weight: plotWeights({ ...cruise, plot: [], dbh: [], count: [] }),
        population: covering,
      },
    );
  }
  if (stratum.some((name) => name !== ""))
    throw new InvalidInput("Points have strata, but the list of strata on Design is empty.");
  if (hasClusters) {
    if (cluster.includes("")) throw new InvalidInput("Some points that count have no cluster, while others have one.");
    const groups = new NameList();
    const group = cluster.map((name) => groups.add(name));
    return groupedPlots(group, groups.names.length);
  }
  return covering === Infinity ? undefined : evenPlots(cruise.plots, covering);
}

function placeIn(known: NameList, name: string): number {
  const place = name === "" ? undefined : known.placeOf(name);
  if (place !== undefined) return place;
  throw new InvalidInput(
    name === ""
      ? "Some points that count have no stratum, while the sheet Design lists strata."
      : `Stratum ${name.slice(0, 60)} of a point is not in the list of strata on Design.`,
  );
}
