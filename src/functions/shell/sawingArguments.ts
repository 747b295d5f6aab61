import { chosen } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { feet, inches } from "../../core/basis/units";
import type { BoardLengths } from "../../core/sawing/boardPieces";
import { splitTaper, tapers } from "../../core/sawing/lyingLog";
import { millLimits, type Mill, type MillLimit, type SayAmount } from "../../core/sawing/millLimits";
import { sawingPatterns } from "../../core/sawing/patterns";
import { commonLengths, type SawOrder } from "../../core/sawing/sawPlan";
import { boardSizes } from "./boardSizes";
import { blank, isWord, rowsSaying } from "./listCells";
import { boundsIn, chosenOr, measuredIn, single } from "./measuredIn";
import { asCells, boundedNumber, isLeftOut, oneNumber, oneText } from "./readings";
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
  readonly sweep: unknown;
  readonly taper: unknown;
  readonly units: unknown;
}

/** Lengths kept where boards are cut in metres: steps of half a metre from 1 m (choices of ours). */
const METRIC_SHORTEST = 1;
const METRIC_STEP = 0.5;

/** What the arguments order; undefined while the log is not measured yet. */
export function sawOrder(given: SawingArguments): SawOrder | undefined {
  const units = unitSystem(given.units);
  const [smallEnd, smallAcross] = endOf(given.smallEnd, "Small end", units);
  const [largeEnd, largeAcross] = endOf(given.largeEnd, "Large end", units);
  const length = single(measuredIn(given.length, "Length", units.distance, feet, 1, 120));
  const { perOurs } = units.diameter;
  const sweep = inches(oneNumber(given.sweep, "Sweep", boundsIn(units.diameter, 0, 60), 0) / perOurs);
  const taper = chosenOr("Taper", given.taper, tapers, splitTaper);
  const order = boardOrder(given);
  if (smallEnd === undefined || largeEnd === undefined || length === undefined) return undefined;
  return {
    ...order,
    log: {
      smallEnd,
      largeEnd,
      length,
      ...(smallAcross !== undefined && { smallEndAcross: smallAcross }),
      // An end measured one way only is taken to be as oval as the other.
      ...(largeAcross !== undefined
        ? { largeEndAcross: largeAcross }
        : smallAcross !== undefined && { largeEndAcross: inches((largeEnd * smallAcross) / smallEnd) }),
      ...(smallAcross === undefined &&
        largeAcross !== undefined && { smallEndAcross: inches((smallEnd * largeAcross) / largeEnd) }),
      ...(sweep > 0 && { sweep }),
    },
    taper,
    mill: millOf(given.mill, units),
    say: sayIn(units),
  };
}

/** One cell for a round end, two for the diameters of an oval one. */
function endOf(given: unknown, what: string, { diameter }: UnitSystem) {
  const reading = measuredIn(given, what, diameter, inches, 1, 120);
  const count = reading.rows * reading.columns;
  if (count > 2) throw new InvalidInput(`${what} should be one cell, or two for an oval end. You have ${count}.`);
  return [reading.at(0, 0), count === 2 ? reading.at(reading.rows - 1, reading.columns - 1) : undefined] as const;
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
  const kerf = inches(oneNumber(given.kerf, "Kerf", boundsIn(units.diameter, 0.01, 1)) / units.diameter.perOurs);
  return {
    pattern: chosen("Pattern", oneText(given.pattern, "Pattern"), sawingPatterns),
    sizes: boardSizes(given.boards, kerf, units),
    kerf,
    lengths: lengthsIn(units),
  };
}

const lengthsIn = (units: UnitSystem): BoardLengths =>
  units.metric
    ? { shortest: feet(METRIC_SHORTEST / units.distance.perOurs), step: feet(METRIC_STEP / units.distance.perOurs) }
    : commonLengths;

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
