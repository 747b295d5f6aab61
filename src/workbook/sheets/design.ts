import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan, TableRow } from "../plan";
import { named, NESTED, nested, out, plot, PLOTS, STRATA, stratum } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { across, asked, down, heading, sheetPlan, title } from "./sheetParts";

export const DESIGN = "Design";
export const ENLARGED = "Enlarged plot";
const LEVEL = "Level distances";
const STRATA_AT = 13;
/** Rows of the list from which the stratum of a plot is picked. */
const STRATA_ROOM = 40;
const BLANK_ROWS = 6;

export const strataNames = `${DESIGN}!$A$${STRATA_AT + 1}:$A$${STRATA_AT + STRATA_ROOM}`;

/** What makes a cruise more than plain points or plots over the whole tract: strata, nested plots, slope, a population. */
export const designSheet = ({ strata = [] }: Pick<WorkbookContent, "strata">): SheetPlan =>
  sheetPlan({
    name: DESIGN,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 4,
    widths: [31, 17, 13, 10, 14, 50, 3, 14, 12, 10, 10, 3, 20, 10],
    blocks: [
      title("Design of the cruise"),
      down("A2", "Note", [
        "Leave all of this blank for plain points or plots over the whole tract. What you fill in goes into every table of the stand, its margins too.",
      ]),
      across("A4", "Heading", ["Setting", "Value", "Unit", "What it does", null, null]),
      down("A5", "Computed", ["Plots on a slope", "Plots that would cover the tract"]),
      down("B5", "Input", [LEVEL]),
      down("B6", "Input", [null], formats.volume),
      down("C5", "Unit", ["", "plots"]),
      down("D5", "Note", [
        "Level distances: tape level. Enlarged plot: the slope stretches the radius on Points. Never both.",
        "Fixed plots only: narrows the margin where they take in much of the land. Blank: left out.",
      ]),
      down("A8", "Note", [
        "Strata: parts of the tract that differ. Name them here with their acres, and on Points the stratum of each plot. Each weighs by its acres.",
        "Guess per ac and CV pct share out your plots for the least margin; they go into no result. A stratum needs 2 plots for a margin.",
        "Nested plots: from the least DBH on, trees are tallied on a plot of that size. By the method Point and fixed the last row is the gauge, the others are plots in acres.",
      ]),
      heading(`A${STRATA_AT - 2}`, "Strata", strataColumns.length),
      heading(`H${STRATA_AT - 2}`, "Nested plots", nestedColumns.length),
      heading(`M${STRATA_AT - 2}`, "Your plots, shared out", 2),
    ],
    names: [
      { name: named.slopeWay, at: "B5" },
      { name: named.population, at: "B6" },
    ],
    entryRules: [
      {
        at: "B5",
        rule: { kind: "list", choices: [LEVEL, ENLARGED], strict: true, message: `${LEVEL} or ${ENLARGED}.` },
      },
      { at: "B6", rule: asked(2, 1e9, "A number of plots, or blank.") },
    ],
    tables: [
      { name: STRATA, at: `A${STRATA_AT}`, columns: strataColumns, rows: withRoom(strata) },
      { name: NESTED, at: `H${STRATA_AT}`, columns: nestedColumns, rows: withRoom([]) },
    ],
    spills: [
      {
        name: out.plotsByStratum,
        at: `M${STRATA_AT}`,
        formula: `=IF(COUNT(${column(STRATA, stratum.variation)})=0,"",${call(
          "PLOTSBYSTRATUM",
          column(STRATA, stratum.stratum),
          column(STRATA, stratum.acres),
          column(STRATA, stratum.guess),
          column(STRATA, stratum.variation),
          `COUNTA(${column(PLOTS, plot.plot)})`,
        )})`,
        rows: STRATA_ROOM + 1,
        columns: 2,
        formats: [formats.general, formats.whole],
      },
    ],
  });

/** A few blank rows to begin with, so that several can be typed or pasted at once. */
const withRoom = (rows: readonly TableRow[]): readonly TableRow[] => [
  ...rows,
  ...Array.from({ length: Math.max(0, BLANK_ROWS - rows.length) }, () => ({})),
];

const stratumHere = (heading: string) => thisRow(STRATA, heading);
const counted = stratumHere(stratum.plots);

const strataColumns: readonly ColumnPlan[] = [
  { heading: stratum.stratum, width: 31 },
  { heading: stratum.acres, width: 17, format: formats.tenth, rule: asked(0.01, 1e6, "Acres, above 0.") },
  { heading: stratum.guess, width: 13, format: formats.volume, rule: asked(0, 1e9, "What an acre may hold.") },
  { heading: stratum.variation, width: 10, format: formats.whole, rule: asked(1, 300, "A percent, such as 45.") },
  {
    heading: stratum.plots,
    width: 14,
    format: formats.whole,
    formula: `=IF(${stratumHere(stratum.stratum)}="","",COUNTIF(${column(PLOTS, plot.stratumUsed)},${stratumHere(stratum.stratum)}))`,
  },
  {
    heading: stratum.check,
    width: 50,
    formula: `=IF(${stratumHere(stratum.stratum)}="","",IF(${stratumHere(stratum.acres)}="","Its acres are missing.",IF(${counted}=0,"No plots there yet: the stand waits for one.",IF(${counted}=1,"One plot has no margin: take another there.",""))))`,
  },
];

const nestedHere = (heading: string) => thisRow(NESTED, heading);
const isGauge = `OR(${named.method}="Point",AND(${named.method}="Point and fixed",${nestedHere(nested.least)}=MAX(${column(NESTED, nested.least)})))`;

const nestedColumns: readonly ColumnPlan[] = [
  { heading: nested.least, width: 14, format: formats.tenth, rule: asked(0, 80, "Inches, from 0 to 80.") },
  { heading: nested.size, width: 12, rule: asked(0.0001, 1000, "Acres of the plot, or the factor of the gauge.") },
  {
    heading: nested.kind,
    width: 10,
    formula: `=IF(${nestedHere(nested.size)}="","",IF(${isGauge},"Gauge","Plot"))`,
  },
  {
    heading: nested.radius,
    width: 10,
    format: formats.tenth,
    formula: `=IF(${nestedHere(nested.kind)}="Plot",${call("PLOTRADIUS", nestedHere(nested.size), "0", named.units)},"")`,
  },
];
