import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { named, plot, PLOTS, species, SPECIES, tree, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { byLocalTable, localWood } from "./localVolumeCells";
import { treesPerAcreHere } from "./designArguments";
import { plotNumbers } from "./points";
import { rowCheck } from "./rowChecks";
import { boardList } from "./mill";
import { speciesCodes } from "./setup";
import { asked, quoted, yesOrNo } from "./sheetParts";
import { ofSpecies } from "./speciesColumns";

const here = (heading: string) => thisRow(TREES, heading);
/** One tree without a volume leaves the whole stand without one, so its row has to say so. */
const NO_VOLUME =
  "The tables have no volume for it, so the stand has none either: correct DBH or logs, or clear the logs to count it without volume.";

/** A point outside the tract is no plot of the cruise, and its trees go with it; on a point that was only counted, none is measured. */
const LEFT_OUT = "Left out: its point lies outside the tract. ";
const COUNTED = "Counted, not measured: its point has Kind Count, so its DBH is not used. ";

/** The two roads to a volume are never mixed in silence: this says which one a tree took. */
const roadTaken = `=IF(${here(tree.dbh)}="","",IF(${here(tree.logs)}<>"",IF(${here(tree.height)}<>"","Logs and total height","Logs"),IF(${here(tree.height)}<>"",IF(${byLocalTable(here(tree.species))},"Local table","Total height"),"")))`;
const noHeight = `OR(${here(tree.dbh)}="",${here(tree.height)}="")`;
const national = (name: "STEMVOLUME" | "TREEWEIGHT", part: string) =>
  call(
    name,
    here(tree.key),
    here(tree.dbh),
    here(tree.height),
    quoted(part),
    named.division,
    named.origin,
    ...['""', '""'],
    named.units,
  );

/** The owner's own table stands in for the national equation where he said so. */
const woodByHeight = `=IF(${noHeight},"",IF(${byLocalTable(here(tree.species))},${localWood(here(tree.dbh), here(tree.height))},${national("STEMVOLUME", "Wood")}))`;

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

const pointHas = (heading: string, mark: string) =>
  `COUNTIFS(${column(PLOTS, plot.plot)},${here(tree.plot)},${column(PLOTS, heading)},"${mark}")>0`;
const unmeasured = `OR(${here(tree.dbh)}="",${here(tree.logs)}="")`;
const sound = `(1-${here(tree.cull)}/100)`;

/** One row for a tree: what is typed, then what is computed of it. */
export const treeColumns = (content: WorkbookContent, checksAt: string): readonly ColumnPlan[] => [
  {
    heading: tree.plot,
    width: 8,
    rule: {
      kind: "listOf",
      range: plotNumbers,
      strict: true,
      message: "A plot from the sheet Points.",
    },
  },
  {
    heading: tree.species,
    width: 10,
    rule: {
      kind: "listOf",
      range: speciesCodes(content),
      strict: false,
      message: "A code from the species list on Setup.",
    },
  },
  {
    heading: tree.dbh,
    width: 9,
    format: formats.tenth,
    rule: asked(1, 80, "Inches, from 1 to 80. Missing a decimal point?"),
  },
  {
    heading: tree.logs,
    width: 11,
    format: formats.tenth,
    rule: asked(0, 6, "16-ft logs to the half, such as 2.5."),
  },
  {
    heading: tree.height,
    width: 10,
    format: formats.whole,
    rule: asked(5, 200, "Total height in feet, from the ground to the tip; blank when only logs were measured."),
  },
  {
    heading: tree.count,
    width: 8,
    format: formats.general,
    rule: asked(0.5, 1000, "How many such trees; blank is one, 2 a tree doubled at the edge, 0.5 a halved one."),
  },
  { heading: tree.take, width: 8, rule: yesOrNo },
  {
    heading: tree.cull,
    width: 9,
    format: formats.whole,
    rule: asked(0, 100, "Percent, 15 for 15 percent."),
  },
  { heading: tree.note, width: 22 },
  {
    heading: tree.distance,
    width: 12,
    format: formats.tenth,
    rule: asked(1, 300, "Level feet from the middle of the point, where a tree was taped; blank for the others."),
  },
  { heading: tree.road, width: 20, formula: roadTaken },
  {
    heading: tree.formClass,
    width: 11,
    format: formats.whole,
    formula: `=IF(${here(tree.logs)}="","",${ofSpecies(species.usedFormClass, here(tree.species), named.formClass)})`,
  },
  {
    heading: tree.volume,
    width: 11,
    format: formats.volume,
    formula: `=${call("TREEVOLUME", here(tree.dbh), here(tree.logs), named.rule, here(tree.formClass), named.units)}`,
  },
  {
    heading: tree.lumber,
    width: 11,
    format: formats.volume,
    formula: `=IF(${unmeasured},"",${call("TREELUMBER", here(tree.dbh), here(tree.logs), boardList, named.kerf, named.pattern, here(tree.formClass), named.units)}*${named.realized}/100*${sound})`,
  },
  {
    heading: tree.harvestDbh,
    width: 15,
    format: formats.tenth,
    formula: `=IF(OR(${here(tree.dbh)}="",${here(tree.take)}="No",${here(tree.left)}<>""),"",${here(tree.dbh)})`,
  },
  {
    heading: tree.harvest,
    width: 12,
    format: formats.volume,
    formula: `=IF(OR(${unmeasured},${here(tree.take)}="No"),"",${here(tree.volume)}*${sound})`,
  },
  {
    heading: tree.key,
    width: 14,
    format: formats.whole,
    formula: `=${ofSpecies(species.key, here(tree.species))}`,
  },
  {
    heading: tree.wood,
    width: 10,
    format: formats.tenth,
    formula: woodByHeight,
  },
  {
    heading: tree.weight,
    width: 10,
    format: formats.volume,
    formula: `=IF(${noHeight},"",${national("TREEWEIGHT", "Stem wood, green")})`,
  },
  {
    heading: tree.perAcre,
    width: 15,
    format: formats.tenth,
    formula: treesPerAcreHere,
  },
  {
    heading: tree.left,
    width: 9,
    formula: `=IF(${pointHas(plot.outside, "Yes")},"Yes",IF(AND(${here(tree.dbh)}<>"",${pointHas(plot.kind, "Count")}),"Count",""))`,
  },
  {
    heading: tree.check,
    width: 44,
    formula: `=TRIM(IF(OR(${here(tree.left)}="",${here(tree.dbh)}=""),"",IF(${here(tree.left)}="Yes","${LEFT_OUT}","${COUNTED}"))&${mostImportant(rowCheck(checksAt, call("CHECKTREES", ...alone)))})`,
  },
  { heading: tree.accepted, width: 24 },
];

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
