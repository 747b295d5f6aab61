import { LOGS_SHEET } from "../../workbook/sheets/logs";
import { log as heading, LOGS } from "../../workbook/tables";
import type { EntryKind } from "../entry/entryKind";
import type { EntryState } from "../entry/entryState";
import type { Job, SavedLog } from "../job/job";
import { logsOf } from "../job/readTables";
import type { NumberedLog } from "./logLine";
import { parseLogLine } from "./parseLogLine";
import { sayLog } from "./sayLog";
import { writeLogLine } from "./writeLogLine";

const saved = ({ row, name, log }: SavedLog) => ({ row, entry: { name, log } });

/** Logs of the scale sheet. A new one gets the next number; one that is changed keeps its own. */
export const logKind = (job: () => Job, now: () => EntryState<NumberedLog>): EntryKind<NumberedLog> => ({
  table: LOGS,
  sheet: LOGS_SHEET,
  saved: () => job().logs.map(saved),
  savedIn: (table) => logsOf(table).map(saved),
  write: ({ log }) => writeLogLine(log),
  say: ({ name, log }) => `log ${name}, ${sayLog(log, job().species)}`,
  key: ({ name, log }) => `${name.toLowerCase()} ${writeLogLine(log)}`,
  whereabouts: ({ name }) => ` of log ${name}`,
  isHere: () => true,
  nothingToUndo: () => "There is no log to take back.",

  read(text, changes) {
    const { pending } = now();
    const last = (pending.at(-1)?.entry ?? job().logs.at(-1))?.log.species;
    const line = parseLogLine(text, { species: job().species, lastSpecies: last === "" ? undefined : last });
    if (line.kind !== "entry") return line;
    const taken = [...job().logs, ...pending.map(({ entry }) => entry)].map(({ name }) => Number(name));
    const next = Math.max(0, ...taken.filter(Number.isInteger)) + 1;
    return { kind: "entry", entry: { name: changes?.name ?? String(next), log: line.entry } };
  },

  row: ({ name, log: { species, smallEnd, length, largeEnd, sweep, deduction, note } }) => ({
    [heading.log]: name !== "" && Number.isFinite(Number(name)) ? Number(name) : name,
    [heading.species]: species,
    [heading.smallEnd]: smallEnd,
    [heading.largeEnd]: largeEnd,
    [heading.length]: length,
    [heading.sweep]: sweep ?? null,
    [heading.deduction]: deduction,
    [heading.note]: note === "" ? null : note,
  }),
});
