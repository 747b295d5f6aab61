import type { Choice } from "../basis/choices";
import { shown } from "../basis/require";
import type { Source } from "../basis/source";

/** What was measured of the height of the trees: the two roads to their volume, or both. */
export interface HeightMeasured extends Choice {
  readonly logs: boolean;
  readonly total: boolean;
}

export const byLogs: HeightMeasured = {
  title: "Logs",
  aliases: ["Logs of 16 ft"],
  logs: true,
  total: false,
};
export const byTotalHeight: HeightMeasured = {
  title: "Total height",
  aliases: ["Height"],
  logs: false,
  total: true,
};
export const byBoth: HeightMeasured = {
  title: "Both",
  aliases: ["Logs and total height"],
  logs: true,
  total: true,
};

export const heightsMeasured: readonly HeightMeasured[] = [byLogs, byTotalHeight, byBoth];

/** The heights of one tree; what is blank is undefined. */
export interface TreeHeights {
  /** [in] */
  readonly dbh: number | undefined;
  /** Merchantable height in logs of 16 ft. */
  readonly logs: number | undefined;
  /** From the ground to the tip. [ft] */
  readonly height: number | undefined;
}

/** The national equations begin where trees reach breast height. [ft] */
const LEAST = 5;
/** Taller than any tree of the east, and taller for its DBH than a stem stands: choices of ours, that only ask. */
const MOST = 200; // ft
const SLENDER = 16; // ft of height for an inch of DBH
const SMALLEST_SLENDER = 4; // in; saplings are slenderer
/** Hardwood sawtimber begins here; a smaller tree has no logs to measure. [in] */
const SAWTIMBER = 11;
/** Stem that a 16-ft log takes with its trim, and what stands below it. [ft] */
const LOG = 16.3;
const STUMP = 1;

/**
 * What looks wrong with the heights of a tree, in one plain sentence; "" when nothing does. Above all, a tree whose
 * height was measured the other way than Setup says: it would be missing, in silence, in one of the two volumes.
 */
export function checkHeight(tree: TreeHeights, measured: HeightMeasured): string {
  if (tree.dbh === undefined) return "";
  return strange(tree) || missing(tree, measured);
}

function strange({ dbh = 0, logs, height }: TreeHeights): string {
  if (height === undefined) return "";
  if (height < LEAST) {
    return `Total height ${shown(height)} ft is less than ${LEAST} ft. Are these logs?`;
  }
  if (height > MOST) return `Total height ${shown(height)} ft is over ${MOST} ft. Missing a decimal point?`;
  if (logs !== undefined && logs * LOG + STUMP > height) {
    return `Total height ${shown(height)} ft does not hold ${shown(logs)} logs of 16 ft.`;
  }
  if (dbh >= SMALLEST_SLENDER && height > SLENDER * dbh) {
    return `Total height ${shown(height)} ft looks like too much for ${shown(dbh)} in.`;
  }
  return "";
}

function missing({ dbh = 0, logs, height }: TreeHeights, measured: HeightMeasured): string {
  if (measured.total && height === undefined) {
    return logs === undefined
      ? "Total height is missing, so this tree adds no wood."
      : `Total height is missing, so this tree adds board feet but no wood; Setup says ${saidOf(measured)}.`;
  }
  if (measured.logs && logs === undefined && height !== undefined && dbh >= SAWTIMBER) {
    return `Logs are missing, so this tree adds wood but no board feet; Setup says ${saidOf(measured)}.`;
  }
  return "";
}

const saidOf = ({ logs, total }: HeightMeasured) =>
  logs && total ? "both heights are measured" : total ? "total height is measured" : "logs are measured";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Heights that ask for a second look",
    where: "under 5 ft, over 200 ft, over 16 ft for an inch of DBH, or too short for the logs of 16.3 ft in it",
    standing: "choice of ours",
  },
];
