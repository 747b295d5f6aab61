import { checkHeight } from "../core/cruise/checkHeight";
import type { LineNote } from "./lineNote";
import type { CellValue, TableRow } from "./plan";
import { tree } from "./tables";

/** Diameters that a tally in inches seldom leaves; choices of ours. [in] */
const SMALLEST = 4;
const LARGEST = 60;
/** Half of the trees thicker than this speak for centimetres. [in] */
const THICK_STAND = 28;
/** More logs than a tree has. */
const MOST_LOGS = 10;
/** A pasted tally may have either height, or none. */
const ANY_HEIGHT = { title: "", logs: false, total: false };

const aboveZero = (value: CellValue | undefined) => (typeof value === "number" && value > 0 ? value : undefined);

/** What looks odd in a tally that could be read: it is taken all the same, since odd may be right. */
export function pastedDoubts(
  headings: { readonly dbh: string | undefined; readonly height: string | undefined },
  trees: readonly { readonly line: number; readonly text: string; readonly row: TableRow }[],
): readonly LineNote[] {
  const diameters = trees.map(({ row }) => Number(row[tree.dbh]));
  const whole = [wholeText(headings.dbh, diameters), inMeters(headings.height)].flatMap((says) =>
    says === undefined ? [] : [{ line: 0, text: "", says }],
  );
  const single = trees.flatMap(({ line, text, row }) => doubtsOf(row).map((says) => ({ line, text, says })));
  return [...whole, ...single];
}

const inMeters = (heading: string | undefined) =>
  heading !== undefined && /(\b|_)(m|met(er|re)s?)\b/i.test(heading)
    ? `The heading "${heading}" says meters, but the workbook takes feet.`
    : undefined;

function wholeText(dbhHeading: string | undefined, diameters: readonly number[]): string | undefined {
  if (dbhHeading !== undefined && /\bcm\b|_cm\b/i.test(dbhHeading)) {
    return `The heading "${dbhHeading}" says centimetres, but the workbook takes inches.`;
  }
  const middle = [...diameters].sort((a, b) => a - b)[Math.floor(diameters.length / 2)];
  if (middle === undefined || middle <= THICK_STAND || middle > 2.54 * LARGEST) return undefined;
  return `Half of the trees are ${middle} in DBH or more. Are these centimetres? The workbook takes inches.`;
}

function doubtsOf(row: TableRow): readonly string[] {
  const dbh = Number(row[tree.dbh]);
  const cull = row[tree.cull];
  const doubts: string[] = [];
  const [logs, height] = [row[tree.logs], row[tree.height]];
  if (row[tree.species] === null) doubts.push("The species is missing.");
  if (dbh > LARGEST) {
    const tenth = Number((dbh / 10).toFixed(2));
    const meant = tenth >= SMALLEST && tenth <= LARGEST ? ` Did you mean ${tenth}?` : "";
    doubts.push(`DBH ${dbh} in is very large.${meant}`);
  }
  if (typeof logs === "number" && logs > MOST_LOGS)
    doubts.push(`${logs} logs of 16 ft? A total height has a column of its own.`);
  const odd = checkHeight({ dbh, logs: aboveZero(logs), height: aboveZero(height) }, ANY_HEIGHT);
  if (odd !== "") doubts.push(odd);
  if (typeof cull === "number" && cull > 0 && cull < 1) doubts.push(`Cull ${cull} percent, or ${100 * cull} percent?`);
  return doubts;
}
