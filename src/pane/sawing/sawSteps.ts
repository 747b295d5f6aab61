import type { CellValue } from "../../workbook/plan";
import { number, text } from "../job/cells";

/** One row of the cut list. */
export interface SawStep {
  readonly number: number;
  /** How the log is turned before it; "edge" at the edger. */
  readonly turn: string;
  /** Height above the bed that the head is set to; null where no cut is made. */
  readonly reading: number | null;
  readonly frees: string;
  readonly boardFeet: number | null;
  /** The reading as the mill's scale shows it, "12 7/16"; "" where no scale is given. */
  readonly shown: string;
  /** Numbers of the boards it frees, as in the end view. */
  readonly boards: readonly number[];
}

const SIZE = /^\d/; // a board is told by its size; a slab, a half or a quarter by a word

/** The cut list, row by row: cut, turn, head reading, what is freed, board feet. Boards are numbered as they are freed. */
export function stepsOf(rows: readonly (readonly CellValue[])[]): readonly SawStep[] {
  let freed = 0;
  return rows.flatMap(([cutCell, turnCell, readingCell, freesCell, boardFeetCell, , shownCell]) => {
    const cut = number(cutCell);
    if (cut === null) return [];
    const [turn, frees] = [text(turnCell), text(freesCell)];
    const isBoard = turn !== "edge" && SIZE.test(frees);
    const boards = isBoard ? frees.split(" + ").map(() => (freed += 1)) : [];
    return [
      {
        number: cut,
        turn,
        reading: number(readingCell),
        frees,
        boardFeet: number(boardFeetCell),
        shown: text(shownCell ?? null),
        boards,
      },
    ];
  });
}

/** A step in words. */
export function sayStep(step: SawStep, unit: string): string {
  const { turn, reading, frees, boards } = step;
  const freed = boards.length === 0 ? frees : `${frees} (${boardsNamed(boards)})`;
  if (turn === "edge") return `At the edger: ${freed}.`;
  if (reading === null) return `Left on the bed: ${freed}.`;
  const turned = turn === "none" ? "" : `Turn: ${turn}. `;
  const of = step.shown.endsWith("marks") ? "of the scale" : unit;
  return `${turned}Head reading ${settingSaid(step)} ${of}. Frees ${freed}.`;
}

/** The head reading as it is set: by the mill's own scale where that is given; "" where no cut is made. */
export const settingSaid = ({ reading, shown }: SawStep): string =>
  reading === null ? "" : shown || String(Number(reading.toFixed(3)));

const boardsNamed = (numbers: readonly number[]) =>
  `${numbers.length === 1 ? "board" : "boards"} ${numbers.join(", ")}`;
