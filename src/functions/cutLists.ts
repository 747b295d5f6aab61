import { InvalidInput } from "../core/basis/problem";
import { shown } from "../core/basis/require";
import { feet, inches } from "../core/basis/units";
import { logsForCutList as chosenLogs, type NamedLog, type WantedPiece } from "../core/sawing/logsForCutList";
import { best } from "../core/sawing/patterns/best";
import { requireSawLog } from "../core/sawing/sawLog";
import { answered, spilled } from "./shell/answers";
import { boundsIn } from "./shell/measuredIn";
import { asCells, blank, boundedNumber, names, oneNumber } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { isWord } from "./shell/listCells";
import { millOf } from "./shell/sawingArguments";
import { unitSystem, type UnitSystem } from "./shell/unitSystem";

/**
 * Units of what is given.
 * @customenum {string}
 */
export enum CutListUnits {
  /** Inches and feet */
  imperial = "imperial",
  /** Centimetres and metres */
  metric = "metric",
}

/**
 * Which logs to saw for a list of wanted pieces, what each should give, and what is still missing.
 * @customfunction LOGSFORCUTLIST
 * @param logs Logs: columns of log number, small end and large end in inches (cm), and length in feet (m).
 * @param cut_list Wanted pieces: columns of piece, thickness and width in inches (cm), length in feet (m), and count.
 * @param kerf Width of wood that the saw turns to sawdust, in inches (cm).
 * @param [mill] Limits of the mill, a column of names and one of numbers, as for SAWPLAN. Left out: no limits.
 * @param [units] "imperial" (inches, feet) or "metric" (cm, m); board feet either way. Left out: imperial.
 * @returns Log, pieces, board feet; then what is missing, and the most that any choice of these logs could give.
 */
export function logsForCutList(
  logs: any[][],
  cut_list: any[][],
  kerf: any,
  mill?: any[][],
  units?: CutListUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const header = ["Log", "Pieces", "Board feet"];
    const given = logsOf(logs, system);
    const wanted = piecesOf(cut_list, system);
    if (given.length === 0) return spilled(header, [["No logs yet"]]);
    if (wanted.length === 0) return spilled(header, [["No pieces yet"]]);
    const result = saidIn(
      system,
      chosenLogs,
    )({
      logs: given,
      wanted,
      kerf: inches(oneNumber(kerf, "Kerf", boundsIn(system.diameter, 0.01, 1)) / system.diameter.perOurs),
      mill: millOf(mill, system),
      pattern: best,
    });
    const said = (pieces: readonly { readonly name: string; readonly count: number }[]) =>
      pieces.map(({ name, count }) => `${count} of ${name}`).join(", ");
    const missing = result.missing.reduce((sum, one) => sum + one.boardFeet, 0);
    return spilled(header, [
      ...result.logs.map(({ log, pieces, boardFeet }) => [log, said(pieces), boardFeet]),
      ["Still missing", said(result.missing) || "nothing", missing],
      ["No choice of these logs gives more than", "", result.atMost],
    ]);
  });
}

function logsOf(given: unknown, system: UnitSystem): readonly NamedLog[] {
  const { diameter, distance } = system;
  return rowsOf(given, "log", 4).map(([name, smallEnd, largeEnd, length], i) => {
    const log = {
      smallEnd: inches(numberIn(smallEnd, `Small end of log ${i + 1}`, boundsIn(diameter, 1, 120)) / diameter.perOurs),
      largeEnd: inches(numberIn(largeEnd, `Large end of log ${i + 1}`, boundsIn(diameter, 1, 120)) / diameter.perOurs),
      length: feet(numberIn(length, `Length of log ${i + 1}`, boundsIn(distance, 1, 120)) / distance.perOurs),
    };
    saidIn(system, requireSawLog)(log);
    return { name: nameOf(name, `Log ${i + 1}`), log };
  });
}

function piecesOf(given: unknown, { diameter, distance }: UnitSystem): readonly WantedPiece[] {
  return rowsOf(given, "piece", 5).map(([name, thickness, width, length, count], i) => {
    const of = `of piece ${i + 1}`;
    const wanted = numberIn(count, `Count ${of}`, { unit: "", low: 1, high: 10_000 });
    if (!Number.isInteger(wanted)) {
      throw new InvalidInput(`Count ${of} should be a whole number. You have ${shown(wanted)}.`);
    }
    return {
      name: nameOf(name, `piece ${i + 1}`),
      count: wanted,
      piece: {
        thickness: inches(numberIn(thickness, `Thickness ${of}`, boundsIn(diameter, 0.1, 60)) / diameter.perOurs),
        width: inches(numberIn(width, `Width ${of}`, boundsIn(diameter, 0.1, 120)) / diameter.perOurs),
        length: feet(numberIn(length, `Length ${of}`, boundsIn(distance, 0.1, 120)) / distance.perOurs),
      },
    };
  });
}

/** Rows that say something, a heading row apart. */
function rowsOf(given: unknown, what: string, columns: number): readonly (readonly unknown[])[] {
  const cells = asCells(given);
  const rows = cells.filter(
    (row, i) => !(i === 0 && isWord(row[1]) && isWord(row[2])) && row.some((cell) => cell !== 0 && !blank(cell)),
  );
  if (rows.length > 0 && (cells[0]?.length ?? 0) < columns) {
    throw new InvalidInput(`The list of ${what}s needs ${columns} columns. You have ${cells[0]?.length ?? 0}.`);
  }
  return rows;
}

function numberIn(cell: unknown, what: string, bounds: { unit: string; low?: number; high?: number }): number {
  if (cell === 0 || blank(cell)) throw new InvalidInput(`${what} is missing.`);
  return boundedNumber(cell, what, bounds);
}

const nameOf = (cell: unknown, leftOut: string): string => names(cell, "Name").at(0, 0) ?? leftOut;
