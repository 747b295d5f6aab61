import { InvalidInput } from "../basis/problem";
import type { Acres } from "../basis/units";
import { evenPlots, plotsByArea, type PlotDesign } from "./plotDesign";
import { combinedError, tooFewIn } from "./stratified";

/** A stratum as its list has it. */
export interface ListedStratum {
  readonly name: string;
  readonly acres: Acres;
}

/** What is known of the plots beside their strata. */
export interface PlotsInStrata {
  /** Number of the stratum of each plot, counted from 0. */
  readonly stratum: ArrayLike<number>;
  /** What each plot weighs in the mean of its own stratum; left out where all weigh the same. */
  readonly weight?: Float64Array | undefined;
  /** How many plots would cover the tract, for fixed plots only. */
  readonly population?: number;
}

/**
 * The design of a tract whose strata were cruised each by itself: a plot weighs its stratum's share of the acres,
 * divided among the plots there, so that a stratum with many plots does not count for more land. The error is that of
 * stratifiedEstimate, where the formulas stand; strips weigh by their acres inside each stratum.
 *
 * @throws InvalidInput naming a stratum without plots, of which nothing is known
 */
export function stratifiedPlots(
  strata: readonly ListedStratum[],
  { stratum, weight, population = Infinity }: PlotsInStrata,
): PlotDesign {
  const plots = strata.map((_, place) =>
    Array.from({ length: stratum.length }, (__, plot) => plot).filter((plot) => stratum[plot] === place),
  );
  const empty = plots.findIndex((own) => own.length === 0);
  if (empty >= 0) {
    throw new InvalidInput(
      `Stratum ${called(strata[empty])} has no plots. Visit one there, or take its acres off the list of strata.`,
    );
  }
  const all = strata.reduce((sum, { acres }) => sum + acres, 0);
  const shares = strata.map(({ acres }) => acres / all);
  const insides = plots.map((own, place) =>
    weight
      ? plotsByArea(Float64Array.from(own, (plot) => weight[plot] as number))
      : evenPlots(own.length, population * (shares[place] as number)),
  );
  const weights = new Float64Array(stratum.length);
  plots.forEach((own, place) => {
    const inside = own.reduce((sum, plot) => sum + (weight?.[plot] ?? 1), 0);
    for (const plot of own) weights[plot] = ((shares[place] as number) * (weight?.[plot] ?? 1)) / inside;
  });
  return {
    weight: weights,
    errorOf: (values) =>
      combinedError(
        plots.map((own, place) => {
          if (own.length < 2) throw tooFewIn(called(strata[place]), own.length);
          const { standardError } = (insides[place] as PlotDesign).errorOf(
            Float64Array.from(own, (plot) => values[plot] as number),
          );
          return {
            variance: ((shares[place] as number) * standardError) ** 2,
            plots: own.length,
          };
        }),
      ),
  };
}

const called = (stratum: ListedStratum | undefined) => stratum?.name.slice(0, 60) ?? "";
