import { M_PER_FOOT } from "../../core/basis/metric";
import { InvalidInput } from "../../core/basis/problem";
import { feet } from "../../core/basis/units";
import { outlineAcres, withoutRepeats } from "../../core/cruise/outline";
import { NUMBER, numberPair } from "./numberPair";
import type { CornerUnit, OutlineReading } from "./outlineReading";
import { placesToMap } from "./placesToMap";
import { readAngles } from "./readAngles";

const FEET_PER_CHAIN = 66;
const feetIn = { feet: 1, chains: FEET_PER_CHAIN, meters: 1 / M_PER_FOOT } as const;
/** As many decimals as a latitude needs to tell one corner from the next; feet of a tract seldom have them. */
const DECIMALS_OF_DEGREES = 4;

/**
 * Reads corners, one a line: two numbers parted by a comma, a tab, a semicolon or blanks. A line without a number is
 * passed over as a heading; a number before the two, as of a corner, is told apart by there being three.
 *
 * @throws InvalidInput naming the line that cannot be read, or what is wrong with the outline
 */
export function readCorners(text: string, unit: CornerUnit): OutlineReading {
  const lines = text
    .split(/\r?\n/)
    .map((line, at) => ({ line: line.trim(), number: at + 1 }))
    .filter(({ line }) => /\d/.test(line));
  if (lines.length === 0)
    throw new InvalidInput("There are no numbers here. Paste two for each corner, one corner a line.");
  if (unit === "degrees" || (unit === "looks" && lookLikeDegrees(lines.map(({ line }) => line)))) {
    return placesToMap(
      lines.map(({ line, number }, at) => readAngles(line, number, at + 1)),
      "Latitude and longitude",
    );
  }
  const taken = unit === "looks" ? "feet" : unit;
  const perUnit = feetIn[taken];
  const corners = withoutRepeats(
    lines.map(({ line, number }, at) => {
      const [east, north] = numberPair(line, number, at + 1, "east and north");
      return { east: feet(east * perUnit), north: feet(north * perUnit) };
    }),
  );
  outlineAcres(corners); // refuses what is no outline
  return { corners, source: `${capital(taken)} from a corner`, origin: undefined, notes: [] };
}

/** Letters of the compass or a sign for degrees; or small numbers, some with the decimals of a receiver. */
function lookLikeDegrees(lines: readonly string[]): boolean {
  if (lines.every((line) => /[°º]|\b[NS]\b.*\b[EW]\b|\d\s*[NS]\b|[NS]\s*\d/i.test(line))) return true;
  const pairs = lines.map((line) => line.match(NUMBER)?.slice(-2) ?? []);
  const within = ([latitude, longitude]: readonly string[]) =>
    Math.abs(Number(latitude ?? 99)) <= 90 && Math.abs(Number(longitude ?? 999)) <= 180;
  const decimals = (number: string) => number.split(".")[1]?.length ?? 0;
  return pairs.every(within) && pairs.some((pair) => pair.every((one) => decimals(one) >= DECIMALS_OF_DEGREES));
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
