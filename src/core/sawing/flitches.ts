import { inches, type Feet, type Inches } from "../basis/units";
import { worthOf, type BoardPiece, type BoardSize } from "./boardSize";
import { HAIR, slotsOf, waysToFill } from "./fill";
import { freedThickness } from "./scale";
import { acrossLargeEnd, acrossSmallEnd, diameterAt, type SawLog } from "./sawLog";

/** What a slice of the log is edged to: one board, or several of one length side by side. */
export interface Flitch {
  /** As it comes off the saw: as listed, or thicker where the settings keep to a scale. [in] */
  readonly thickness: Inches;
  /** As listed for its boards. [in] */
  readonly listed: Inches;
  /** True where its thickness is that of the last piece on the bed; see scale.ts. */
  readonly isLeftOnBed?: boolean;
  readonly length: Feet;
  /** The widest first. */
  readonly boards: readonly BoardPiece[];
  /** Over all boards and the kerfs between them. [in] */
  readonly width: Inches;
  /** What the plan adds up: dollars when the boards are priced, else board feet. */
  readonly worth: number;
}

/** Which lengths are kept when a board does not run the whole log. */
export interface BoardLengths {
  /** [ft] */
  readonly shortest: Feet;
  /** Steps between lengths, counted from the shortest. [ft] */
  readonly step: Feet;
}

/** What flitches are edged to, and how. */
export interface Edging {
  readonly sizes: readonly BoardSize[];
  readonly priced: boolean;
  readonly lengths: BoardLengths;
  /** Wood lost between two boards of one flitch. [in] */
  readonly edgerKerf: number;
  /** False when each flitch gives one board only. */
  readonly sideBySide: boolean;
  /** Of the head saw, and the step of the scale that it is set by; no step: it can be set anywhere. [in] */
  readonly kerf: number;
  readonly scaleStep?: number;
}

/**
 * Every way worth taking to cross-cut and edge a flitch of this log, grouped by thickness. The flitch is cut to one
 * length, from the shortest up or the log's full one, and that from the large end, since taper leaves wane at the small
 * end first. Across it lie boards of the listed widths side by side, an edger's kerf between them: for every total
 * width the boards that are worth most, found exactly like a stack of boards.
 */
export function flitches(log: SawLog, edging: Edging): readonly (readonly Flitch[])[] {
  const { sizes, lengths } = edging;
  const thicknesses = [...new Set(sizes.map(({ thickness }) => thickness))].sort((a, b) => a - b);
  const groups = thicknesses.map((thickness) => {
    const ofThickness = sizes.filter((size) => size.thickness === thickness);
    return lengthsOf(log, lengths, ofThickness).flatMap((length) => {
      const pieces = ofThickness.filter((size) => fitsLength(size, length)).map((size) => ({ ...size, length }));
      return edgedFrom(pieces, widestAt(log, length), edging);
    });
  });
  return groups.filter((group) => group.length > 0);
}

function edgedFrom(pieces: readonly BoardPiece[], widest: number, edging: Edging): Flitch[] {
  const { priced, edgerKerf, sideBySide, kerf, scaleStep } = edging;
  const flitch = (boards: readonly BoardPiece[], width: number): Flitch[] => {
    const first = boards[0];
    if (!first) return [];
    const worth = boards.reduce((sum, board) => sum + worthOf(board, priced), 0);
    const thickness = inches(freedThickness(first.thickness, kerf, scaleStep));
    return [
      {
        thickness,
        listed: first.thickness,
        length: first.length,
        boards,
        width: inches(width),
        worth,
      },
    ];
  };
  if (!sideBySide) return pieces.flatMap((piece) => (piece.width <= widest + HAIR ? flitch([piece], piece.width) : []));

  const slots = pieces.map((item) => [
    {
      extent: item.width,
      low: 0,
      high: widest,
      worth: worthOf(item, priced),
      pieces: 1,
      item,
    },
  ]);
  return waysToFill(slots, edgerKerf).flatMap((way) => {
    const boards = slotsOf(way).map(({ slot }) => slot.item);
    return flitch(
      boards.sort((a, b) => b.width - a.width),
      way.free - edgerKerf,
    );
  });
}

/** The lengths boards are cut to, and the wanted ones of their own; a length of its own may be below the shortest. */
function lengthsOf(log: SawLog, { shortest, step }: BoardLengths, sizes: readonly BoardSize[]): readonly Feet[] {
  const lengths: Feet[] = [];
  if (sizes.some(({ length }) => length === undefined)) {
    for (let i = 0; shortest + i * step < log.length - HAIR; i += 1) lengths.push((shortest + i * step) as Feet);
    lengths.push(log.length);
  }
  for (const { length } of sizes) {
    if (length !== undefined && length <= log.length + HAIR) lengths.push(length);
  }
  return [...new Set(lengths)].sort((a, b) => a - b);
}

/** The widest that a board of a length can be, whichever way the log lies. */
function widestAt(log: SawLog, length: number): number {
  const [large, small] = [acrossLargeEnd(log), acrossSmallEnd(log)];
  return Math.max(diameterAt(log, length), large - ((large - small) * length) / log.length);
}

const fitsLength = ({ length }: BoardSize, wanted: Feet) => length === undefined || length === wanted;
