import { chosen, textOf } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { dollars, dollarsPerMbf, feet, inches } from "../../core/basis/units";
import type { BoardSize } from "../../core/sawing/boardSize";
import type { BoardLengths } from "../../core/sawing/flitches";
import { millLimits, type Mill, type MillLimit, type SayAmount } from "../../core/sawing/millLimits";
import { sawingPatterns } from "../../core/sawing/patterns";
import { commonLengths, type SawOrder } from "../../core/sawing/sawPlan";
import { boundsIn, measuredIn, single } from "./measuredIn";
import { asCells, blank as nothingIn, boundedNumber, isLeftOut, oneNumber, oneText } from "./readings";
import { unitSystem, type Unit, type UnitSystem } from "./unitSystem";

/** The arguments that SAWPLAN, SAWYIELD and SAWLAYOUT share, as the cell gave them. */
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
    mill: millOf(given.mill, units),
    say: sayIn(units),
  };
}

/** Writes an amount in the user's unit: "2 ft", "0.6 m". */
export function sayIn(units: UnitSystem): SayAmount {
  return (amount, measure) => {
    const { name, perOurs } = unitOf(units, measure);
    return `${shown(Number((amount * perOurs).toPrecision(3)))} ${name}`;
  };
}

const unitOf = (units: UnitSystem, measure: MillLimit["measure"]): Unit =>
  measure === "percent" ? { name: "%", perOurs: 1 } : units[measure];

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
export const isWord = (cell: unknown) => typeof cell === "string" && /^[^\d]*[a-z]{3}/i.test(cell.trim());

/** Rows of a range that say something, without a heading row. */
function rowsSaying(
  cells: readonly (readonly unknown[])[],
  isHeading: (row: readonly unknown[]) => boolean,
): readonly (readonly unknown[])[] {
  return cells.filter((row, i) => !(i === 0 && isHeading(row)) && row.some((cell) => !blank(cell)));
}

/**
 * Thickness and width in the first two columns; when there are more, the price per MBF in the last. A heading row may
 * name two further columns: the only length wanted, and the price of a piece.
 */
function boardSizes(given: unknown, { diameter, distance }: UnitSystem): readonly BoardSize[] {
  const cells = asCells(given);
  const isHeading = ([thickness, width]: readonly unknown[]) => isWord(thickness) && (isWord(width) || blank(width));
  const heading = cells[0] && isHeading(cells[0]) ? cells[0].map(textOf) : [];
  const lengthAt = heading.findIndex((text) => /^length/i.test(text));
  const eachAt = heading.findIndex((text) => /^(price|\$) (per piece|each|a piece)/i.test(text));

  return rowsSaying(cells, isHeading).map((row, i) => {
    const size = (cell: unknown, what: string, low: number, high: number) => {
      if (blank(cell)) throw new InvalidInput(`${what} of board ${i + 1} in your list is missing.`);
      return inches(boundedNumber(cell, what, boundsIn(diameter, low, high)) / diameter.perOurs);
    };
    const last = row.length - 1;
    const length = row[lengthAt];
    const each = row[eachAt];
    const price = last > 1 && last !== lengthAt && last !== eachAt ? row[last] : undefined;
    return {
      thickness: size(row[0], "Board thickness", 0.1, 60),
      width: size(row[1], "Board width", 0.1, 120),
      ...(!blank(length) && {
        length: feet(boundedNumber(length, "Board length", boundsIn(distance, 0.1, 120)) / distance.perOurs),
      }),
      ...(!blank(price) && {
        price: dollarsPerMbf(boundedNumber(price, "Board price", { unit: "$ per MBF", low: 0, high: 1e6 })),
      }),
      ...(!blank(each) && {
        pricePerPiece: dollars(boundedNumber(each, "Price of a piece", { unit: "$", low: 0, high: 1e6 })),
      }),
    };
  });
}

/** Names of limits in the first column, their numbers in the second; a limit without a number does not bind. */
export function millOf(given: unknown, units: UnitSystem): Mill {
  if (isLeftOut(given)) return {};
  const rows = rowsSaying(asCells(given), ([name, value]) => isWord(name) && isWord(value));
  const limits = rows.flatMap(([name, value]) => {
    const { id, title, measure } = chosen("Mill limit", name, millLimits);
    const unit = unitOf(units, measure);
    return blank(value) ? [] : [[id, boundedNumber(value, title, boundsIn(unit, 0.01, 1000)) / unit.perOurs] as const];
  });
  return Object.fromEntries(limits);
}
