import { logScale } from "../../src/functions/logs";
import { scaleSheet } from "../../src/functions/scaleSheets";
import { ratio, type Ratio } from "./ratio";

const ROWS = 50_000;
const RULES = ["Doyle", "Scribner Decimal C", "International 1/4"] as const;

/**
 * A large log tally under three rules at once, against bare loops that read and write the very cells that a
 * spreadsheet hands over and takes, but check nothing and know no blanks.
 */
export async function threeRulesRatios(): Promise<readonly Ratio[]> {
  const diameters = Array.from({ length: ROWS }, (_, i) => [8 + (i % 240) / 10]);
  const lengths = Array.from({ length: ROWS }, (_, i) => [8 + 2 * (i % 5)]);
  const species = Array.from({ length: ROWS }, (_, i) => [["RO", "SM", "YP"][i % 3]]);
  const table = Float64Array.from({ length: 41 * 21 }, (_, i) => i); // a look-up costs the same whatever it holds

  const doyle = (diameter: number, length: number) => ((diameter - 4) ** 2 * length) / 16;
  const decimalC = (diameter: number, length: number) =>
    table[Math.ceil(diameter - 0.5) * 21 + 2 * Math.floor(length / 2)]!;
  const international = (diameter: number, length: number) => {
    const sections = Math.floor(length / 4);
    let sum = 0;
    let top = diameter;
    for (let section = 0; section < sections; section += 1) {
      sum += 0.22 * top * top - 0.71 * top;
      top += 0.5;
    }
    return 0.904762 * (sum + (length / 4 - sections) * (0.22 * top * top - 0.71 * top));
  };
  const bareLoops = () =>
    [doyle, decimalC, international].map((rule) => {
      const cells = new Array<number[]>(ROWS);
      for (let i = 0; i < ROWS; i += 1) cells[i] = [rule(diameters[i]![0]!, lengths[i]![0]!)];
      return cells;
    });

  return [
    await ratio(
      "LOGSCALE, 50,000 rows under three rules at once, against bare loops over the same cells",
      "3",
      () => RULES.map((rule) => logScale(diameters, lengths, rule as never)),
      bareLoops,
    ),
    await ratio(
      "SCALESHEET, 50,000 logs by species under three rules, against the same loops",
      "3",
      () => RULES.map((rule) => scaleSheet(species, diameters, lengths, [[rule]])),
      bareLoops,
    ),
  ];
}
