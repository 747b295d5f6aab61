import { acres, squareFeetPerAcre } from "../../src/core/basis/units";
import type { Cruise } from "../../src/core/cruise/cruise";
import { fixedPlots } from "../../src/core/cruise/methods/fixedPlots";
import { pointSample } from "../../src/core/cruise/methods/pointSample";
import { sameSize } from "../../src/core/cruise/plotSizes";
import { numberIn, published } from "./published";

/** One line of a tally as a test writes it down; plots are counted from 0. */
export interface Line {
  readonly plot: number;
  readonly dbh: number;
  readonly count?: number;
  readonly volume?: number;
}

const columns = (plots: number, lines: readonly Line[]) => ({
  plots,
  plot: lines.map(({ plot }) => plot),
  dbh: lines.map(({ dbh }) => dbh),
  count: lines.map(({ count = 1 }) => count),
  ...(lines.some(({ volume }) => volume !== undefined) && { volume: lines.map(({ volume = 0 }) => volume) }),
});

export const pointCruise = (factor: number, plots: number, lines: readonly Line[]): Cruise => ({
  method: pointSample,
  size: sameSize(squareFeetPerAcre(factor)),
  ...columns(plots, lines),
});

export const plotCruise = (size: number, plots: number, lines: readonly Line[]): Cruise => ({
  method: fixedPlots,
  size: sameSize(acres(size)),
  ...columns(plots, lines),
});

/** The cruise of 4 points that can be worked out by hand; the third has no trees. */
export const fourPointLines: readonly Line[] = published("cruise/constructed-four-points.csv").rows.map((row) => ({
  plot: numberIn(row, "point") - 1,
  dbh: numberIn(row, "dbh"),
}));
