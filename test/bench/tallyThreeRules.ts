import { logScale } from "../../src/functions/logs";
import { scaleSheet } from "../../src/functions/scaleSheets";
import { ratio, type Ratio } from "./ratio";

const ROWS = 50_000;
const RULES = ["Doyle", "Scribner Decimal C", "International 1/4"] as const;

/** A large log tally under three rules at once, against bare loops over typed arrays. */
export async function threeRulesRatios(): Promise<readonly Ratio[]> {
  const diameters = Float64Array.from({ length: ROWS }, (_, i) => 8 + (i % 240) / 10);
  const lengths = Float64Array.from({ length: ROWS }, (_, i) => 8 + 2 * (i % 5));
  const diameterCells = Array.from(diameters, (value) => [value]);
  const lengthCells = Array.from(lengths, (value) => [value]);
  const speciesCells = Array.from({ length: ROWS }, (_, i) => [["RO", "SM", "YP"][i % 3]]);
  const table = Float64Array.from({ length: 41 * 21 }, (_, i) => i); // a look-up costs the same whatever it holds
  const scaled = RULES.map(() => new Float64Array(ROWS));

  const bareLoops = () => {
    const [byDoyle, byTable, byInternational] = scaled as [Float64Array, Float64Array, Float64Array];
    for (let i = 0; i < ROWS; i += 1) {
      const diameter = diameters[i]!;
      const length = lengths[i]!;
      byDoyle[i] = ((diameter - 4) ** 2 * length) / 16;
      byTable[i] = table[Math.ceil(diameter - 0.5) * 21 + 2 * Math.floor(length / 2)]!;
      const sections = Math.floor(length / 4);
      let sum = 0;
      let top = diameter;
      for (let section = 0; section < sections; section += 1) {
        sum += 0.22 * top * top - 0.71 * top;
        top += 0.5;
      }
      byInternational[i] = 0.904762 * (sum + (length / 4 - sections) * (0.22 * top * top - 0.71 * top));
    }
    return scaled;
  };

  return [
    await ratio(
      "LOGSCALE, 50,000 rows under three rules at once, against bare loops over typed arrays",
      "3",
      () => RULES.map((rule) => logScale(diameterCells, lengthCells, rule as never)),
      bareLoops,
    ),
    await ratio(
      "SCALESHEET, 50,000 logs by species under three rules, against the same loops without the sums",
      "10",
      () => RULES.map((rule) => scaleSheet(speciesCells, diameterCells, lengthCells, [[rule]])),
      bareLoops,
    ),
  ];
}
