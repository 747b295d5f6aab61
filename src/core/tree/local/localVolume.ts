import { OutOfRange } from "../../basis/problem";
import { requirePositive, shown } from "../../basis/require";
import type { Source } from "../../basis/source";
import type { LocalTable, Range } from "./fitLocalTable";

/** How far a table may be read beyond its felled trees, as a share of its least and greatest measure: a choice of ours. */
const BEYOND = 0.1;

/**
 * Volume of a standing tree by a local table.
 *
 * A table speaks for trees like those it was made of, so it ends a tenth beyond the smallest and the largest of them.
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange beyond the felled trees, or where the equation gives nothing
 */
export function localVolume(
  { form, coefficients, dbh: dbhs, height: heights }: LocalTable,
  dbh: number,
  height: number,
) {
  requirePositive("DBH", dbh);
  requirePositive("Height", height);
  requireWithin("DBH", dbh, dbhs);
  requireWithin("height", height, heights);
  const volume = form.volume(coefficients, dbh, height);
  if (volume > 0) return volume;
  throw new OutOfRange(`The local table gives nothing for a tree of ${shown(dbh)} by ${shown(height)}.`);
}

/** Where a table ends. */
export const reachOf = ({ least, most }: Range): Range => ({ least: least * (1 - BEYOND), most: most * (1 + BEYOND) });

function requireWithin(what: string, value: number, felled: Range): void {
  const { least, most } = reachOf(felled);
  if (value >= least && value <= most) return;
  throw new OutOfRange(
    `The felled trees of the local table have a ${what} from ${shown(felled.least)} to ${shown(felled.most)}. You have ${shown(value)}.`,
  );
}

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Where a local volume table ends",
    where: "a tenth beyond the smallest and the largest of the felled trees",
    standing: "choice of ours",
  },
];
