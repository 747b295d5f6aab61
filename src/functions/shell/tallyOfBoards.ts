import { textOf } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { shown } from "../../core/basis/require";
import { feet, inches } from "../../core/basis/units";
import { boardTally } from "../../core/lumber/boardTally";
import type { BoardLine, TallyMeasure } from "../../core/lumber/tallyMeasure";
import { spilled } from "./answers";
import { BadRows } from "./badRows";
import { column, isMissing, isNothing, numberAt, sharedRows, type Column } from "./columns";
import { boundsIn } from "./measuredIn";
import type { Bounds, Cells } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** The columns of a tally of boards, as the cell gave them. */
export interface BoardColumns {
  readonly thickness: unknown;
  readonly width: unknown;
  readonly length: unknown;
  readonly pieces: unknown;
  readonly group: unknown;
}

const NO_GROUP = "(blank)";
const PIECES = { unit: "boards", low: 1, high: 1e6 };

/**
 * The table of a tally: each size or group with its pieces and its board feet, and all boards in the last row.
 *
 * @throws InvalidInput naming the first bad row and how many more there are
 */
export function tallyOfBoards(given: BoardColumns, measure: TallyMeasure, units: UnitSystem): Cells {
  const grouped = !isMissing(column(given.group, "Group"));
  const lines = boardLines(given, units, grouped);
  const header = [
    grouped ? "Group" : `Size ${units.diameter.name} x ${units.diameter.name} x ${units.distance.name}`,
    "Pieces",
    `Board feet, ${measure.title.toLowerCase()}`,
  ];
  if (lines.length === 0) return spilled(header, [["No boards yet"]]);
  const parts = boardTally(lines, measure);
  const all = (what: "pieces" | "boardFeet") => parts.reduce((total, part) => total + part[what], 0);
  return spilled(header, [
    ...parts.map((part) => [part.name, part.pieces, part.boardFeet]),
    ["All boards", all("pieces"), all("boardFeet")],
  ]);
}

type NamedLine = BoardLine & { readonly name: string };

/**
 * Reads the lines of a tally. A row without any measure is passed over; a row with some of them missing is an error
 * for the whole table, since a sum without it would be wrong in silence.
 */
function boardLines(given: BoardColumns, { diameter, distance }: UnitSystem, grouped: boolean): readonly NamedLine[] {
  const thickness = column(given.thickness, "Thickness");
  const width = column(given.width, "Width");
  const length = column(given.length, "Length");
  const pieces = column(given.pieces, "Pieces");
  const group = column(given.group, "Group");
  const rows = sharedRows([thickness, width, length, pieces, group]);
  const measures = [thickness, width, length];
  const lists = measures.filter(({ single }) => !single);
  const measured = lists.length > 0 ? lists : measures;

  const bad = new BadRows();
  const lines: NamedLine[] = [];
  for (let row = 0; row < rows; row += 1) {
    if (measured.every((list) => isNothing(list.at(row)))) continue;
    bad.guard(row, () => {
      const thick = measureAt(thickness, row, boundsIn(diameter, 0.01, 60));
      const wide = measureAt(width, row, boundsIn(diameter, 0.1, 120));
      const long = measureAt(length, row, boundsIn(distance, 0.1, 120));
      lines.push({
        name: grouped ? groupName(group.at(row)) : [thick, wide, long].map(shown).join(" x "),
        thickness: inches(thick / diameter.perOurs),
        width: inches(wide / diameter.perOurs),
        length: feet(long / distance.perOurs),
        pieces: piecesAt(pieces, row),
      });
    });
  }
  bad.settle();
  return lines;
}

function measureAt(list: Column, row: number, bounds: Bounds): number {
  if (isNothing(list.at(row))) throw new InvalidInput(`${list.what} is missing.`);
  return numberAt(list, row, bounds, 0);
}

function piecesAt(list: Column, row: number): number {
  const pieces = numberAt(list, row, PIECES, 1);
  if (!Number.isInteger(pieces)) throw new InvalidInput(`Pieces should be a whole number. You have ${shown(pieces)}.`);
  return pieces;
}

const groupName = (cell: unknown): string => (isNothing(cell) ? NO_GROUP : textOf(cell).slice(0, 100) || NO_GROUP);
