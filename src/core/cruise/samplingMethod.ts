import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import type { Acres, Feet, Inches, PerAcre, SquareFeetPerAcre } from "../basis/units";

/** How trees are picked for the tally, and so how many trees on an acre each of them stands for. */
export interface SamplingMethod extends Choice {
  readonly id: string;
  readonly sources: readonly Source[];
  /** What the size of this method is, so that it can be asked for and checked. */
  readonly size: {
    readonly what: string;
    readonly kind: "basal area" | "area";
    readonly low: number;
    readonly high: number;
  };
  /** Whether every plot says as much as any other, or as much as it has acres. */
  readonly plotsWeigh: "equally" | "by area";
  /** True when every tree of the tract is tallied: then there is no sampling error to state. */
  readonly complete: boolean;
  /** How trees below the breakpoint diameter are picked, where that is not this way. */
  readonly thinTrees?: SamplingMethod;
  /**
   * Trees per acre that one tallied tree stands for on its own plot.
   * @throws InvalidInput when the diameter or the size is not a number above 0
   */
  treesPerAcre(dbh: Inches, size: SampleSize): PerAcre;
  /** How far from the middle of the plot a tree may stand and still be in, on level ground; left out, there is no middle. */
  farthest?(dbh: Inches, size: SampleSize): Feet;
}

/** The basal area factor of a gauge [ft2/ac], or the size of a plot [ac]. */
export type SampleSize = SquareFeetPerAcre | Acres;
