import { beside } from "../address";
import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan } from "../plan";
import { named, out, plot, PLOTS, tree, TREES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { counting, sizes } from "./designArguments";
import { plotDesignColumns } from "./plotDesignColumns";
import { rowCheck, rowChecks } from "./rowChecks";
import { asked, down, heading, sheetPlan, title, yesOrNo } from "./sheetParts";

export const POINTS = "Points";
const TABLE_AT = "A7";
/** Right of the table and a column kept free, in letters as formulas write them. */
const ANSWER_AT = "AD7";
const ANSWER_COLUMNS = 5;
/** Right of the answer and one more column. */
const CHECKS_AT = beside(ANSWER_AT, 0, ANSWER_COLUMNS + 1);
/** Basal area and volume per acre in the table of plots, counted from 1. */
const AREA_COLUMN = 4;
const VOLUME_COLUMN = 5;
/** Rows of the list from which the plot of a tree is picked. */
const PLOT_ROOM = 300;

export const plotNumbers = `${POINTS}!$A$8:$A$${7 + PLOT_ROOM}`;

/** The plots, empty ones too, and beside them what each one says per acre. */
export function pointsSheet({ plots }: WorkbookContent): SheetPlan {
  return sheetPlan({
    name: POINTS,
    sheetClass: "foundation",
    frozenRows: 7,
    landscape: true,
    printTitleRow: 7,
    widths: [...plotColumns.map(({ width }) => width), 3, 12, 12, 14, 14, 16, 3, 52],
    blocks: [
      title("Points"),
      down("A2", "Note", [
        "One row for every plot you laid out. A plot counts when it was visited, is marked as having no trees, or has trees tallied.",
        "A plot you visited and found empty counts as zero: put Yes under Trees none. A plot not visited yet is left out.",
        "Do not move a plot because it looks poor. A plot whose center lies outside the tract is no plot: put Yes under Outside.",
        "What else differs from plot to plot stands right of Check.",
      ]),
      heading(beside(ANSWER_AT, -1, 0), "Per plot", 5),
      heading(beside(CHECKS_AT, -1, 0), "Checks of each row", 1),
    ],
    tables: [{ name: PLOTS, at: TABLE_AT, columns: plotColumns, rows: plots }],
    spills: [
      {
        name: out.plots,
        at: ANSWER_AT,
        formula: `=${call(
          "PLOTTABLE",
          column(TREES, tree.plot),
          counting(tree.dbh),
          column(TREES, tree.volume),
          column(PLOTS, plot.counted),
          named.method,
          sizes,
          column(TREES, tree.count),
          named.units,
        )}`,
        rows: LAST_ROW - 7,
        columns: ANSWER_COLUMNS,
        formats: [formats.general, formats.whole, formats.whole, formats.tenth, formats.volume],
      },
      rowChecks(out.plotChecks, CHECKS_AT, "CHECKPLOTS", [
        ...[tree.plot, tree.species, tree.dbh, tree.logs].map((heading) => column(TREES, heading)),
        ...[plot.plot, plot.visited, plot.none].map((heading) => column(PLOTS, heading)),
      ]),
    ],
  });
}

const here = (heading: string) => thisRow(PLOTS, heading);
const numbers = `$AD$8:$AD$${LAST_ROW}`;
const answers = `$AD$8:$AH$${LAST_ROW}`;
/** What the answer beside the table says of a plot that counts; blank for any other. */
const said = (place: number) =>
  `=IF(${here(plot.counted)}="","",IFERROR(INDEX(${answers},MATCH(${here(plot.counted)},${numbers},0),${place}),""))`;

const plotColumns: readonly ColumnPlan[] = [
  { heading: plot.plot, width: 8 },
  { heading: plot.east, width: 9, format: formats.whole },
  { heading: plot.north, width: 9, format: formats.whole },
  { heading: plot.date, width: 12, format: formats.date },
  { heading: plot.crew, width: 12 },
  { heading: plot.visited, width: 10, rule: yesOrNo },
  { heading: plot.none, width: 12, rule: yesOrNo },
  { heading: plot.slope, width: 10, format: formats.whole, rule: asked(0, 100, "Percent, 15 for 15 percent.") },
  { heading: plot.note, width: 24 },
  {
    heading: plot.tallied,
    width: 11,
    format: formats.whole,
    formula: `=IF(${here(plot.plot)}="","",COUNTIF(${column(TREES, tree.plot)},${here(plot.plot)}))`,
  },
  {
    heading: plot.counted,
    width: 14,
    formula: `=IF(${here(plot.plot)}="","",IF(OR(${here(plot.visited)}="Yes",${here(plot.none)}="Yes",${here(plot.tallied)}>0),IF(OR(${here(plot.outside)}="Yes",${here(plot.kind)}="Count"),"",${here(plot.plot)}),""))`,
  },
  {
    heading: plot.volume,
    width: 17,
    format: formats.volume,
    formula: said(VOLUME_COLUMN),
  },
  { heading: plot.check, width: 52, formula: plotCheck() },
  ...plotDesignColumns,
  { heading: plot.tallyArea, width: 15, format: formats.tenth, formula: said(AREA_COLUMN) },
  { heading: plot.accepted, width: 24 },
];

/** The first thing that looks wrong with a plot, in plain words: how it is drawn, then how it was tallied and marked. */
function plotCheck(): string {
  const trees = `${here(plot.tallied)}`;
  const cases: readonly (readonly [test: string, sentence: string])[] = [
    [`${here(plot.plot)}=""`, ""],
    [
      `AND(${here(plot.outside)}="Yes",${trees}>0)`,
      "Outside the tract, so the trees tallied on it are left out. Clear Outside if it lies inside.",
    ],
    [`${here(plot.outside)}="Yes"`, ""],
    [
      `AND(${here(plot.kind)}="Count",COUNTIFS(${column(TREES, tree.plot)},${here(plot.plot)},${column(TREES, tree.dbh)},">0")>0)`,
      "Only counted, so the DBH of the trees tallied on it is not used. Clear Kind if they were measured.",
    ],
    [
      `AND(${named.method}="All",${here(plot.size)}="",COUNTA(${column(PLOTS, plot.plot)})>1)`,
      "Every tree is tallied in parts: give this part its acres under Own size.",
    ],
  ];
  return `=${cases.reduceRight((otherwise, [test, sentence]) => `IF(${test},"${sentence}",${otherwise})`, rowCheck(CHECKS_AT))}`;
}

/** Columns that are typed and not computed. */
export const plotEntries: readonly string[] = plotColumns
  .filter(({ formula }) => formula === undefined)
  .map(({ heading }) => heading);
