import { OutOfRange } from "../basis/problem";
import { requireAtLeast, requirePositive, shown } from "../basis/require";
import { told } from "../basis/telling";
import { feet, type Feet, type Inches, type Percent } from "../basis/units";

/** A standing tree as the form-class tables know it. */
export interface FormClassTree {
  /** Diameter at breast height, over bark. [in] */
  readonly dbh: Inches;
  /** Merchantable height in logs of 16 feet, halves counted. */
  readonly logs: number;
  /** Girard form class. [%] */
  readonly formClass: Percent;
}

export const TREE_LOG_LENGTH: Feet = feet(16);

/** What the tables and the tapers behind them cover. DBH in inches, logs of 16 feet. */
const SMALLEST = 10;
const LARGEST = 40;
const FEWEST_LOGS = 1;
const MOST_LOGS = 4;
const LOGS_OF_ALL_SIZES = 3;
const SMALLEST_OF_MORE_THAN_3_LOGS = 12;
const LARGEST_OF_MORE_THAN_3_LOGS = 32;
const LOWEST_FORM_CLASS = 65; // classes of the 1946 tables, from memory
const HIGHEST_FORM_CLASS = 90;

const TABLE = "The form-class table";

/**
 * Throws unless the tables reach a tree; nothing is drawn out beyond them.
 *
 * Half a log has no neighbour below it in the tables, so they say nothing of a tree of less than one log.
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange when a tree lies outside the tables or beyond the upper-log tapers
 */
export function requireFormClassTree(tree: FormClassTree): void {
  if (!isWellInside(tree)) requireEachMeasure(tree);
}

/** Most trees are, and columns run to a hundred thousand of them. */
const isWellInside = ({ dbh, logs, formClass }: FormClassTree) =>
  dbh >= SMALLEST &&
  dbh <= LARGEST &&
  logs >= FEWEST_LOGS &&
  logs <= LOGS_OF_ALL_SIZES &&
  formClass >= LOWEST_FORM_CLASS &&
  formClass <= HIGHEST_FORM_CLASS;

function requireEachMeasure({ dbh, logs, formClass }: FormClassTree): void {
  requirePositive("DBH", dbh, "in");
  requirePositive("Logs", logs);
  requirePositive("Form class", formClass, "%");
  requireAtLeast(TABLE, dbh, SMALLEST, "in DBH");
  requireAtMost(TABLE, dbh, LARGEST, "in DBH");
  requireAtLeast(TABLE, logs, FEWEST_LOGS, "log of 16 ft");
  requireAtLeast(TABLE, formClass, LOWEST_FORM_CLASS, "% form class");
  requireAtMost(TABLE, formClass, HIGHEST_FORM_CLASS, "% form class");
  if (logs > MOST_LOGS) {
    throw new OutOfRange(`Upper-log tapers are known for up to ${MOST_LOGS} logs of 16 ft. You have ${shown(logs)}.`);
  }
  if (logs > LOGS_OF_ALL_SIZES && (dbh < SMALLEST_OF_MORE_THAN_3_LOGS || dbh > LARGEST_OF_MORE_THAN_3_LOGS)) {
    throw new OutOfRange((telling) => {
      const least = telling.number(SMALLEST_OF_MORE_THAN_3_LOGS, "in");
      const most = told(telling, LARGEST_OF_MORE_THAN_3_LOGS, "in");
      const came = told(telling, dbh, "in");
      return `Upper-log tapers of more than ${LOGS_OF_ALL_SIZES} logs are known from ${least} to ${most} DBH. You have ${shown(logs)} logs at ${came}.`;
    });
  }
}

function requireAtMost(source: string, value: number, most: number, unit: string): void {
  if (value <= most) return;
  throw new OutOfRange(
    (telling) =>
      `${source} as published has no value above ${told(telling, most, unit)}. You have ${telling.number(value, unit)}.`,
  );
}
