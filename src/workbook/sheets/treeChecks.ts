import { call, column, thisRow } from "../formula";
import { named, plot, PLOTS, species, SPECIES, tree, TREES } from "../tables";
import { rowCheck } from "./rowChecks";
import { noHeight } from "./treeWood";

const here = (heading: string) => thisRow(TREES, heading);

/** One tree without a volume leaves the whole stand without one, so its row has to say so. */
const NO_VOLUME =
  "The tables have no volume for it, so the stand has none either: correct DBH or logs, or clear the logs to count it without volume.";

/** A point outside the tract is no plot of the cruise, and its trees go with it; on a point that was only counted, none is measured. */
const LEFT_OUT = "Left out: its point lies outside the tract. ";
const COUNTED = "Counted, not measured: its point has Kind Count, so its DBH is not used. ";

/** Why the national equations are silent stands in the flag of the cell itself. */
const NO_WOOD =
  "Neither the national equations nor a local table have wood for it: see the species list on Setup, DBH and height.";

/** Where the slip is named already, the row only has to say what hangs on it. */
const UNTIL_MENDED = " Until it is mended, the stand has no volume.";

/** One sentence for a row: its own slip first, since mending it mends what follows from it. */
const mostImportant = (slip: string) => {
  const noVolume = `AND(${here(tree.left)}="",ISERROR(${here(tree.volume)}))`;
  const heights = call("CHECKHEIGHTS", here(tree.dbh), here(tree.logs), here(tree.height), named.heightMeasured);
  const noWood = `IF(OR(${noHeight},ISNUMBER(${here(tree.wood)})),"","${NO_WOOD}")`;
  const ofHeight = `IF(${heights}<>"",${heights},${noWood})`;
  return `IF(${slip}<>"",${slip}&IF(${noVolume},"${UNTIL_MENDED}",""),IF(${noVolume},"${NO_VOLUME}",${ofHeight}))`;
};

const judgedBy = [column(PLOTS, plot.plot), column(SPECIES, species.code), named.minDbh, named.maxDbh];
const checked = [tree.plot, tree.species, tree.dbh, tree.logs];

/** What a row is checked by, alone. */
const alone = [...checked.map(here), ...judgedBy];

/** What every row is checked by, with all rows in sight. */
export const treeCheckArguments: readonly string[] = [
  ...checked.map((heading) => column(TREES, heading)),
  ...judgedBy,
  // A tree without a volume says so itself; the others are compared all the same.
  `IFERROR(${column(TREES, tree.volume)},"")`,
  column(TREES, tree.distance),
  named.method,
  // A sweep changes what a tree stands for and not how far it may stand, so this is the size before it.
  `IF(${column(PLOTS, plot.size)}="",${named.size},${column(PLOTS, plot.size)})`,
  named.units,
];

const sentence = (checksAt: string) => mostImportant(rowCheck(checksAt, call("CHECKTREES", ...alone)));
const leftOut = `IF(OR(${here(tree.left)}="",${here(tree.dbh)}=""),"",IF(${here(tree.left)}="Yes","${LEFT_OUT}","${COUNTED}"))`;

/** The sentence of a row. @param checksAt where those that see all rows stand */
export const treeCheck = (checksAt: string): string => `=TRIM(${leftOut}&${sentence(checksAt)})`;
