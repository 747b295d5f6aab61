import { BOARDS_SHEET } from "../../workbook/sheets/boards";
import { BOARDS, sawn as heading } from "../../workbook/tables";
import type { EntryKind } from "../entry/entryKind";
import type { Job, SavedBoard } from "../job/job";
import { boardsOf } from "../job/readTables";
import type { BoardsState } from "../paneState";
import type { SawnBoard } from "./boardLine";
import { parseBoardLine } from "./parseBoardLine";
import { sayBoard, writeBoardLine } from "./writeBoardLine";

const saved = ({ row, log, board }: SavedBoard) => ({ row, entry: { log, board } });

/** Boards that were sawn, from whatever log; a line that is changed keeps its log. */
export const boardKind = (job: () => Job, now: () => BoardsState): EntryKind<SawnBoard> => ({
  table: BOARDS,
  sheet: BOARDS_SHEET,
  saved: () => job().boards.map(saved),
  savedIn: (table) => boardsOf(table).map(saved),
  write: ({ board }) => writeBoardLine(board),
  say: ({ log, board }) => sayBoard(board) + (log === "" ? "" : `, from log ${log}`),
  key: ({ log, board }) => `${log.toLowerCase()} ${writeBoardLine(board)}`,
  whereabouts: ({ log }) => (log === "" ? "" : ` of log ${log}`),
  isHere: () => true,
  nothingToUndo: () => "There is no board to take back.",

  read(text, changes) {
    const line = parseBoardLine(text);
    if (line.kind !== "entry") return line;
    return { kind: "entry", entry: { log: changes?.log ?? now().log, board: line.entry } };
  },

  row: ({ log, board: { thickness, width, length, pieces, note } }) => ({
    [heading.log]: log === "" ? null : Number.isFinite(Number(log)) ? Number(log) : log,
    [heading.thickness]: thickness,
    [heading.width]: width,
    [heading.length]: length,
    [heading.pieces]: pieces,
    [heading.grade]: note === "" ? null : note,
    ...speciesOfLog(job(), log),
  }),
});

/** Boards are of the species of their log, where that is known. */
function speciesOfLog(job: Job, name: string) {
  const species = name === "" ? undefined : job.logs.find((one) => one.name === name)?.log.species;
  return species === undefined || species === "" ? {} : { [heading.species]: species };
}
