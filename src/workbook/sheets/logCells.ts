import { BUYERS_CARD } from "../../core/log/scaleCard";
import { lookedUp } from "../formula";
import { log, LOGS, named } from "../tables";
import { quoted } from "./sheetParts";

export const LOGS_SHEET = "Logs";
export const CARD_SHEET = "Card";

/** Row of the headings of the table of logs, counted from 1. */
export const LOG_HEADINGS = 9;
/** Rows of the list from which a log is picked. */
const LOG_ROOM = 300;

/** Cells that hold the numbers of logs, with room for more, as a rule for entry needs them. */
export const logNumbers = `${LOGS_SHEET}!$A$${LOG_HEADINGS + 1}:$A$${LOG_HEADINGS + LOG_ROOM}`;

/** What the table of logs has for the log that is picked on the sheet Sawing. */
export const ofPickedLog = (heading: string): string => lookedUp(LOGS, heading, log.log, named.pickedLog);

/** One answer where the buyer scales by a card of his own, another where he names a rule. */
export const byCardOrRule = (byCard: string, byRule: string): string =>
  `IF(${named.scaleRule}=${quoted(BUYERS_CARD)},${byCard},${byRule})`;
