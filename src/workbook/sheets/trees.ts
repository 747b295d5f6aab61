import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan } from "../plan";
import { named, plot, PLOTS, species, SPECIES, tree, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { plotNumbers } from "./points";
import { boardList } from "./sawing";
import { speciesCodes } from "./setup";
import { asked, down, sheetPlan, title, yesOrNo } from "./sheetParts";

export const TREES_SHEET = "Trees";

/** The tally: one row for a tree, or for several alike with their count. */
export function treesSheet(content: WorkbookContent): SheetPlan {
  return sheetPlan({
    name: TREES_SHEET,
    sheetClass: "foundation",
    frozenRows: 7,
    landscape: true,
    printTitleRow: 7,
    blocks: [
      title("Trees"),
      down("A2", "Note", [
        "Type plot, species, DBH and 16-ft logs to the half. A blank Count is one tree. A blank Take counts as part of the harvest; No leaves the tree standing.",
        "Volume bf is gross, by the log rule and form class on Setup. Harvest bf and Lumber bf take the cull off; Lumber bf is what the logs should saw out to, times Realized lumber.",
        "Check asks about a row that looks odd. Say under Accepted because why it is right, and it no longer counts as open.",
      ]),
    ],
    tables: [{ name: TREES, at: "A7", columns: treeColumns(content), rows: content.trees }],
  });
}

const here = (heading: string) => thisRow(TREES, heading);
/** One tree without a volume leaves the whole stand without one, so its row has to say so. */
const NO_VOLUME =
  " The tables have no volume for it, so the stand has none either: correct DBH or logs, or clear the logs to count it without volume.";

const unmeasured = `OR(${here(tree.dbh)}="",${here(tree.logs)}="")`;
const sound = `(1-${here(tree.cull)}/100)`;

const treeColumns = (content: WorkbookContent): readonly ColumnPlan[] => [
  {
    heading: tree.plot,
    width: 8,
    rule: { kind: "listOf", range: plotNumbers, strict: true, message: "A plot from the sheet Points." },
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
  { heading: tree.logs, width: 11, format: formats.tenth, rule: asked(0, 6, "16-ft logs to the half, such as 2.5.") },
  { heading: tree.count, width: 8, format: formats.whole, rule: asked(1, 1000, "How many such trees; blank is one.") },
  { heading: tree.take, width: 8, rule: yesOrNo },
  { heading: tree.cull, width: 9, format: formats.whole, rule: asked(0, 100, "Percent, 15 for 15 percent.") },
  { heading: tree.note, width: 22 },
  {
    heading: tree.volume,
    width: 11,
    format: formats.volume,
    formula: `=${call("TREEVOLUME", here(tree.dbh), here(tree.logs), named.rule, named.formClass, named.units)}`,
  },
  {
    heading: tree.lumber,
    width: 11,
    format: formats.volume,
    formula: `=IF(${unmeasured},"",${call("TREELUMBER", here(tree.dbh), here(tree.logs), boardList, named.kerf, named.pattern, named.formClass, named.units)}*${named.realized}/100*${sound})`,
  },
  {
    heading: tree.harvestDbh,
    width: 15,
    format: formats.tenth,
    formula: `=IF(OR(${here(tree.dbh)}="",${here(tree.take)}="No"),"",${here(tree.dbh)})`,
  },
  {
    heading: tree.harvest,
    width: 12,
    format: formats.volume,
    formula: `=IF(OR(${unmeasured},${here(tree.take)}="No"),"",${here(tree.volume)}*${sound})`,
  },
  {
    heading: tree.perAcre,
    width: 15,
    format: formats.tenth,
    formula: `=${call("TREESPERACRE", here(tree.dbh), named.method, named.size, named.units)}`,
  },
  {
    heading: tree.check,
    width: 44,
    formula: `=TRIM(${call(
      "CHECKTREES",
      here(tree.plot),
      here(tree.species),
      here(tree.dbh),
      here(tree.logs),
      column(PLOTS, plot.plot),
      column(SPECIES, species.code),
      named.minDbh,
      named.maxDbh,
    )}&IF(ISERROR(${here(tree.volume)}),"${NO_VOLUME}",""))`,
  },
  { heading: tree.accepted, width: 24 },
];
