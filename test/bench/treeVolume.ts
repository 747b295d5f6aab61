import { upperLogTaper } from "../../src/core/reference/upperLogTaper";
import { builtFunction } from "./builtFunctions";
import { ratio, type Ratio } from "./ratio";

const ROWS = 100_000;
const FORM_CLASS = 78;

/** TREEVOLUME down a column, against a bare loop that builds the same trees log by log over typed arrays. */
export async function treeVolumeRatios(): Promise<readonly Ratio[]> {
  const treeVolume = builtFunction("TREEVOLUME");
  const diameters = Float64Array.from({ length: ROWS }, (_, i) => 12 + (i % 180) / 10);
  const logs = Float64Array.from({ length: ROWS }, (_, i) => 1 + (i % 5) / 2);
  const diameterCells = Array.from(diameters, (value) => [value]);
  const logCells = Array.from(logs, (value) => [value]);
  const volumes = new Float64Array(ROWS);
  const tapers = upperLogTaper.rows.map((row) => [[], row.two, row.three] as const);

  const built = (row: number, count: number): number => {
    let top = Math.round((FORM_CLASS * (10 + 2 * row)) / 10) / 10;
    let sum = (top - 4) * (top - 4);
    for (const taper of tapers[row]![count - 1]!) {
      top -= taper;
      sum += (top - 4) * (top - 4);
    }
    return sum;
  };
  const between = (row: number, count: number): number => {
    const whole = Math.floor(count);
    const fewer = built(row, whole);
    return whole === count ? fewer : fewer + (built(row, whole + 1) - fewer) * (count - whole);
  };
  const loop = () => {
    for (let i = 0; i < ROWS; i += 1) {
      const place = (diameters[i]! - 10) / 2;
      const row = Math.floor(place);
      const below = between(row, logs[i]!);
      volumes[i] = row === place ? below : below + (between(row + 1, logs[i]!) - below) * (place - row);
    }
    return volumes;
  };

  return [
    await ratio(
      "TREEVOLUME, 100,000 rows, Doyle, against a bare loop over typed arrays",
      "3",
      () => treeVolume(diameterCells, logCells, "Doyle", [[FORM_CLASS]]),
      loop,
    ),
  ];
}
