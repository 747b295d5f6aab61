import { chosen } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { dollarsPerMbf, feet, inches } from "../../core/basis/units";
import type { BoardSize } from "../../core/sawing/boardSize";
import type { BoardLengths } from "../../core/sawing/candidates";
import { millLimits, type Mill } from "../../core/sawing/millLimits";
import { sawingPatterns } from "../../core/sawing/patterns";
import { commonLengths, type SawOrder } from "../../core/sawing/sawPlan";
import { boundsIn, measuredIn, single } from "./measuredIn";
import { asCells, blank as nothingIn, boundedNumber, isLeftOut, oneNumber, oneText, type Cells } from "./readings";
import { unitSystem, type UnitSystem } from "./unitSystem";

/** The arguments that SAWPLAN and SAWYIELD share, as the cell gave them. */
export interface SawingArguments {
  readonly smallEnd: unknown;
  readonly largeEnd: unknown;
  readonly length: unknown;
  readonly boards: unknown;
  readonly kerf: unknown;
  readonly pattern: unknown;
  readonly mill: unknown;
  readonly units: unknown;
}

/** Lengths kept where boards are cut in metres: steps of half a metre from 1 m (choices of ours). */
const METRIC_SHORTEST = 1;
const METRIC_STEP = 0.5;

/** What the arguments order; undefined while the log is not measured yet. */
export function sawOrder(given: SawingArguments): SawOrder | undefined {
  const units = unitSystem(given.units);
  const smallEnd = single(measuredIn(given.smallEnd, "Small end", units.diameter, inches, 1, 120));
  const largeEnd = single(measuredIn(given.largeEnd, "Large end", units.diameter, inches, 1, 120));
  const length = single(measuredIn(given.length, "Length", units.distance, feet, 1, 120));
  const order = boardOrder(given);
  if (smallEnd === undefined || largeEnd === undefined || length === undefined) return undefined;
  return {
    ...order,
    log: { smallEnd, largeEnd, length },
    mill: isLeftOut(given.mill) ? {} : millOf(asCells(given.mill), units),
    say: (amount, measure) =>
      `${shown(Number((amount * units[measure].perOurs).toPrecision(3)))} ${units[measure].name}`,
  };
}

/** What is wanted of any log: boards, kerf, pattern and lengths. */
export function boardOrder(given: Pick<SawingArguments, "boards" | "kerf" | "pattern" | "units">) {
  const units = unitSystem(given.units);
  return {
    pattern: chosen("Pattern", oneText(given.pattern, "Pattern"), sawingPatterns),
    sizes: boardSizes(given.boards, units),
    kerf: inches(oneNumber(given.kerf, "Kerf", boundsIn(units.diameter, 0.01, 1)) / units.diameter.perOurs),
    lengths: lengthsIn(units),
  };
}

const lengthsIn = (units: UnitSystem): BoardLengths =>
  units.metric
    ? { shortest: feet(METRIC_SHORTEST / units.distance.perOurs), step: feet(METRIC_STEP / units.distance.perOurs) }
    : commonLengths;

/** In a list of sizes and limits, a 0 is a cell left blank. */
const blank = (cell: unknown) => cell === 0 || nothingIn(cell);
const isWord = (cell: unknown) => typeof cell === "string" && /^[^\d]*[a-z]{3}/i.test(cell.trim());

/** Rows of a range that say something, without a heading row. */
function rowsSaying(cells: Cells, isHeading: (row: readonly unknown[]) => boolean): readonly (readonly unknown[])[] {
  return cells.filter((row, i) => !(i === 0 && isHeading(row)) && row.some((cell) => !blank(cell)));
}

/** Thickness and width in the first two columns; when there are more, the price per MBF in the last. */
function boardSizes(given: unknown, { diameter }: UnitSystem): readonly BoardSize[] {
  const rows = rowsSaying(asCells(given), ([thickness, width]) => isWord(thickness) && (isWord(width) || blank(width)));
  return rows.map((row, i) => {
    const size = (cell: unknown, what: string, low: number, high: number) => {
      if (blank(cell)) throw new InvalidInput(`${what} of board ${i + 1} in your list is missing.`);
      return inches(boundedNumber(cell, what, boundsIn(diameter, low, high)) / diameter.perOurs);
    };
    const thickness = size(row[0], "Board thickness", 0.1, 60);
    const width = size(row[1], "Board width", 0.1, 120);
    const price = row.length > 2 ? row.at(-1) : undefined;
    if (blank(price)) return { thickness, width };
    return {
      thickness,
      width,
      price: dollarsPerMbf(boundedNumber(price, "Board price", { unit: "$ per MBF", low: 0, high: 1e6 })),
    };
  });
}

/** Names of limits in the first column, their numbers in the second; a limit without a number does not bind. */
function millOf(cells: Cells, units: UnitSystem): Mill {
  const rows = rowsSaying(cells, ([name, value]) => isWord(name) && isWord(value));
  const limits = rows.flatMap(([name, value]) => {
    const { id, title, measure } = chosen("Mill limit", name, millLimits);
    const unit = units[measure];
    return blank(value) ? [] : [[id, boundedNumber(value, title, boundsIn(unit, 0.01, 1000)) / unit.perOurs] as const];
  });
  return Object.fromEntries(limits);
}
