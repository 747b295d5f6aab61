import type { TableRow } from "../workbook/plan";
import { board, log, mill } from "../workbook/tables";
import type { EqualBoardsContent } from "../workbook/workbookContent";

type Line = readonly [
  species: string,
  smallEnd: number,
  second: number | null,
  largeEnd: number,
  length: number,
  sweep: number | null,
  deduction: number | null,
  use: "Sell" | "Saw",
  note: string | null,
];

const lines: readonly Line[] = [
  ["ro", 14, 15, 16, 16.4, null, null, "Sell", null],
  ["ro", 12, null, 13.5, 12.5, null, null, "Saw", null],
  ["wo", 15.6, 16.8, 18, 16.4, null, 5, "Sell", "small rot at the butt"],
  ["yp", 18, null, 19.5, 14.4, null, null, "Saw", null],
  ["sm", 11, null, 12.5, 10.4, null, null, "Saw", null],
  ["bc", 13.2, null, 14.5, 12.4, 1.5, 10, "Saw", "sweep"],
  ["hi", 10, null, 11, 8.5, null, null, "Saw", null],
  ["yp", 17, 17.8, 19, 16.5, null, null, "Saw", null],
  ["wo", 15, null, 16.5, 12.4, null, 15, "Saw", "seam along one side"],
  ["sm", 12, null, 14, 16.4, null, null, "Sell", null],
];

/** Ten invented logs, 10 to 18 in at the small end and 8 to 16 ft long with some trim. */
export const demoLogs: readonly TableRow[] = lines.map(
  ([species, smallEnd, second, largeEnd, length, sweep, deduction, use, note], i) => ({
    [log.log]: i + 1,
    [log.species]: species,
    [log.smallEnd]: smallEnd,
    [log.second]: second,
    [log.largeEnd]: largeEnd,
    [log.length]: length,
    [log.sweep]: sweep,
    [log.deduction]: deduction,
    [log.use]: use,
    [log.note]: note,
  }),
);

const LUMBER_PRICE = 900; // $ per MBF, invented

/** Invented boards: 1, 1.25 and 2 in thick, 4 to 12 in wide, all at one price so that the plan goes for the most wood. */
export const demoBoards: readonly TableRow[] = [1, 1.25, 2].flatMap((thickness) =>
  [4, 6, 8, 10, 12].map((width) => ({
    [board.sawn]: thickness,
    [board.width]: width,
    [board.price]: LUMBER_PRICE,
  })),
);

/** Nine boards off a cant that was opened 12 in above the bed: 12 - 9 x 1.125 in leave 1.875 in on the bed. */
export const demoEqualBoards: EqualBoardsContent = { start: 12, thickness: 1, boards: 9 };

const invented = "INVENTED - replace";

/** Invented limits of a small mill. */
export const demoMill: readonly TableRow[] = [
  { [mill.limit]: "Largest diameter", [mill.value]: 26, [mill.unit]: "in", [mill.comment]: invented },
  { [mill.limit]: "Longest log", [mill.value]: 16, [mill.unit]: "ft", [mill.comment]: invented },
  { [mill.limit]: "Shortest log", [mill.value]: 6, [mill.unit]: "ft", [mill.comment]: invented },
  { [mill.limit]: "Blade above bed", [mill.value]: 1, [mill.unit]: "in", [mill.comment]: invented },
  { [mill.limit]: "Shortest board", [mill.value]: 6, [mill.unit]: "ft", [mill.comment]: invented },
  { [mill.limit]: "Scale step", [mill.value]: 0.0625, [mill.unit]: "in", [mill.comment]: invented },
];
