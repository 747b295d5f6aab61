import { logScale } from "../../src/functions/logs";
import { ratio, type Ratio } from "./ratio";

const ROWS = 100_000;

/**
 * LOGSCALE down a column, against a bare loop of the same formula over typed arrays. A sheet hands over and takes back
 * an array for every row: the line of that alone shows what any function is up against, and the loop over cells beside
 * it what the formula costs there.
 */
export async function logScaleRatios(): Promise<readonly Ratio[]> {
  const diameters = Float64Array.from({ length: ROWS }, (_, i) => 8 + (i % 240) / 10);
  const lengths = Float64Array.from({ length: ROWS }, (_, i) => 8 + 2 * (i % 5));
  const diameterCells = Array.from(diameters, (value) => [value]);
  const lengthCells = Array.from(lengths, (value) => [value]);
  const scaled = new Float64Array(ROWS);

  const doyleLoop = () => {
    for (let i = 0; i < ROWS; i += 1) scaled[i] = ((diameters[i]! - 4) ** 2 * lengths[i]!) / 16;
    return scaled;
  };
  const internationalLoop = () => {
    for (let i = 0; i < ROWS; i += 1) {
      const sections = Math.floor(lengths[i]! / 4);
      const rest = lengths[i]! / 4 - sections;
      let sum = 0;
      let top = diameters[i]!;
      for (let section = 0; section < sections; section += 1) {
        sum += 0.22 * top * top - 0.71 * top;
        top += 0.5;
      }
      scaled[i] = 0.904762 * (sum + rest * (0.22 * top * top - 0.71 * top));
    }
    return scaled;
  };

  const onlyHandedOn = () => diameterCells.map((cells) => [cells[0]!]);
  const overCells = () => diameterCells.map((cells, row) => [((cells[0]! - 4) ** 2 * lengthCells[row]![0]!) / 16]);

  const column = (rule: string) => () =>
    logScale(diameterCells, lengthCells, rule as never, undefined, "None" as never);
  return [
    await ratio(
      "Only taking in and giving out 100,000 cells, against a bare loop of Doyle over typed arrays",
      "",
      onlyHandedOn,
      doyleLoop,
    ),
    await ratio(
      "LOGSCALE, 100,000 rows, Doyle, against a bare loop over typed arrays",
      "3",
      column("Doyle"),
      doyleLoop,
    ),
    await ratio(
      "LOGSCALE, 100,000 rows, International 1/4, against a bare loop over typed arrays",
      "3",
      column("International 1/4"),
      internationalLoop,
    ),
    await ratio(
      "LOGSCALE, 100,000 rows, Doyle, against a bare loop that takes and gives cells as a sheet does",
      "3",
      column("Doyle"),
      overCells,
    ),
  ];
}
