import { call, column } from "../formula";
import { formats } from "../formats";
import type { SheetPlan, SpillPlan } from "../plan";
import { named, out, plot, PLOTS, tree, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { counting, sizes, weighting } from "./designArguments";
import { cautionLine, down, sheetPlan, title } from "./sheetParts";

/** One species a column: room for as many as a tally could name. */
const SPECIES_ROOM = 50;
const AT = "A5";

const shared = [
  column(PLOTS, plot.counted),
  named.method,
  sizes,
  named.classWidth,
  column(TREES, tree.count),
  named.classRule,
  ...weighting,
  named.units,
] as const;

/** Trees per acre by diameter class and species, on a sheet of its own so that it may grow both ways. */
export const standTableSheet = ({ species }: WorkbookContent): SheetPlan =>
  tableSheet(species.length, "Stand table", "Trees per acre in each diameter class", {
    name: out.stand,
    formula: `=${call("STANDTABLE", column(TREES, tree.plot), column(TREES, tree.species), counting(tree.dbh), ...shared)}`,
    format: formats.tenth,
  });

/** Volume per acre by diameter class and species. */
export const stockTableSheet = ({ species }: WorkbookContent): SheetPlan =>
  tableSheet(species.length, "Stock table", "Board feet per acre in each diameter class, by the log rule on Setup", {
    name: out.stock,
    formula: `=${call("STOCKTABLE", column(TREES, tree.plot), column(TREES, tree.species), counting(tree.dbh), column(TREES, tree.volume), ...shared)}`,
    format: formats.volume,
  });

function tableSheet(
  species: number,
  name: string,
  note: string,
  { format, ...answer }: Pick<SpillPlan, "name" | "formula"> & { readonly format: string },
): SheetPlan {
  return sheetPlan({
    name,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 5,
    printTitleRow: 5,
    widths: [36, ...new Array<number>(SPECIES_ROOM).fill(11)],
    blocks: [title(name), down("A2", "Note", [note, cautionLine("Estimate")])],
    spills: [
      {
        ...answer,
        at: AT,
        rows: LAST_ROW - 4,
        columns: SPECIES_ROOM + 1,
        headings: species + 2,
        headingLines: 2,
        formats: [formats.tenth, ...new Array<string>(SPECIES_ROOM).fill(format)],
      },
    ],
  });
}
