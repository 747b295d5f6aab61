import { formats } from "../formats";
import type { CellValue, SheetPlan } from "../plan";
import { across, cautionLine, down, onePageWide, sheetPlan } from "./sheetParts";

/** One log's plan to take to the mill, in the order in which the sawyer works. */
export interface SawPaper {
  readonly title: string;
  /** Of the log, of the way it is sawn, and of what that gives; short lines, the drawing stands beside them. */
  readonly facts: readonly string[];
  readonly headings: readonly string[];
  /** Step, turn, head reading, what is freed, numbers of the boards in the drawing, board feet. */
  readonly cuts: readonly (readonly CellValue[])[];
  readonly stamp: string;
}

/** The cautions that go along to the mill. */
export const PAPER_CAUTIONS = ["Sawing", "Log weight", "Ungraded lumber"] as const;

const WIDTHS = [7, 32, 15, 34, 9, 9];
/** The cells over which the drawing lies: as wide as they are high. */
export const DRAWING_OVER = "D3:F20";
const TOP_ROWS = 18;
const CUTS_AT = 22; // below the drawing
const CHARACTERS = { turn: 30, frees: 32 }; // that one line of their columns holds

/** A sheet of values for one page or two, upright, as wide as the paper. */
export function sawPaperSheet({ title, facts, headings, cuts, stamp }: SawPaper): SheetPlan {
  const after = CUTS_AT + cuts.length + 2;
  const notes = [stamp, ...PAPER_CAUTIONS.map(cautionLine)];
  return sheetPlan({
    name: title,
    sheetClass: "presentation",
    widths: WIDTHS,
    print: onePageWide(`A1:F${after + notes.length - 1}`, CUTS_AT),
    blocks: [
      down("A1", "Title", [title]),
      {
        ...down(
          "A3",
          "Computed",
          Array.from({ length: TOP_ROWS }, (_, i) => facts[i] ?? ""),
        ),
        lines: new Array<number>(TOP_ROWS).fill(1),
      },
      { ...across(`A${CUTS_AT}`, "Heading", headings), lines: [2] },
      ...cuts.map((row, i) => ({
        ...across(`A${CUTS_AT + 1 + i}`, "Computed", row, formats.general),
        lines: [linesOf(row)],
      })),
      down(`A${after}`, "Note", notes),
    ],
  });
}

const linesOf = ([, turn, , frees]: readonly CellValue[]): number =>
  Math.max(1, Math.ceil(lengthOf(turn) / CHARACTERS.turn), Math.ceil(lengthOf(frees) / CHARACTERS.frees));

const lengthOf = (cell: CellValue | undefined) => String(cell ?? "").length;
