import { standSummary } from "../../src/functions/stand";
import { ratio, type Ratio } from "./ratio";

const TREES = 100_000;
const PLOTS = 2_000;

/** STANDSUMMARY over a very large cruise, against one pass that only sums its columns. */
export async function standSummaryRatios(): Promise<readonly Ratio[]> {
  const plotCells = Array.from({ length: TREES }, (_, i) => [1 + (i % PLOTS)]);
  const dbhCells = Array.from({ length: TREES }, (_, i) => [10 + (i % 200) / 10]);
  const volumeCells = Array.from({ length: TREES }, (_, i) => [50 + (i % 400)]);
  const plots = Array.from({ length: PLOTS }, (_, i) => [i + 1]);

  const onePass = () => {
    const basalArea = new Float64Array(PLOTS);
    const volume = new Float64Array(PLOTS);
    for (let i = 0; i < TREES; i += 1) {
      const plot = plotCells[i]![0]! - 1;
      const dbh = dbhCells[i]![0]!;
      basalArea[plot]! += 0.005454154 * dbh * dbh;
      volume[plot]! += volumeCells[i]![0]!;
    }
    return [basalArea, volume];
  };

  return [
    await ratio(
      "STANDSUMMARY, 100,000 trees in 2,000 plots, against one pass of summation",
      "10, 40 ms class",
      () => standSummary(plotCells, dbhCells, plots, "Point" as never, [[10]], volumeCells),
      onePass,
    ),
  ];
}
