import { lookedUp } from "../formula";
import { log, LOGS, named } from "../tables";

export const LOGS_SHEET = "Logs";

/** Row of the headings of the table of logs, counted from 1. */
export const LOG_HEADINGS = 9;
/** Rows of the list from which a log is picked. */
const LOG_ROOM = 300;

/** Cells that hold the numbers of logs, with room for more, as a rule for entry needs them. */
export const logNumbers = `${LOGS_SHEET}!$A$${LOG_HEADINGS + 1}:$A$${LOG_HEADINGS + LOG_ROOM}`;

/** What the table of logs has for the log that is picked on the sheet Sawing. */
export const ofPickedLog = (heading: string): string => lookedUp(LOGS, heading, log.log, named.pickedLog);

/** The butt of a log, left out where rounding made the small end thicker: a segment cannot be thinner below. */
export const buttOf = (largeEnd: string, scalingDiameter: string): string =>
  `IF(${largeEnd}>=${scalingDiameter},${largeEnd},"")`;
