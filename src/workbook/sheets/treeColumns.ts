import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { named, plot, PLOTS, species, tree, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { treesPerAcreHere } from "./designArguments";
import { plotNumbers } from "./points";
import { boardList } from "./millTables";
import { speciesCodes } from "./setup";
import { asked, yesOrNo } from "./sheetParts";
import { ofSpecies } from "./speciesColumns";
import { treeCheck } from "./treeChecks";
import { greenWeight, roadTaken, woodByHeight } from "./treeWood";

const here = (heading: string) => thisRow(TREES, heading);
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
    formula: greenWeight,
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
    formula: treeCheck(checksAt),
  },
  { heading: tree.accepted, width: 24 },
];
