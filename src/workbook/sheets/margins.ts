import { beside } from "../address";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { SheetPlan, SpillPlan } from "../plan";
import { named, out, plot, PLOTS, STRATA, stratum, tree, TREES } from "../tables";
import { hasClusters, hasStrata } from "./designArguments";
import { across, cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const MARGINS = "Margins";
/** Strata have this much room, twice. */
const STRATA_ROOM = 42;
const AREA_AT = `A${54 + STRATA_ROOM}`;

const volumes = column(PLOTS, plot.volume);
const areas = column(PLOTS, plot.basalArea);
const rechecks = column(PLOTS, plot.recheck);
/** The values of one column where another holds numbers. */
const where = (values: string, numbers: string) => `FILTER(${values},ISNUMBER(${numbers}))`;
const enough = (numbers: string) => `COUNT(${numbers})<2`;

const estimateFormats = [formats.volume, formats.volume, formats.whole, formats.volume, formats.volume];

/** The same plots by other designs: strata one by one, clusters, the walk, counts and measures, and a check. */
export const marginsSheet = (): SheetPlan =>
  sheetPlan({
    name: MARGINS,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 4,
    widths: [48, 20, 20, 14, 14, 20, 14, 17],
    blocks: [
      title("Margins by other designs"),
      down("A2", "Note", [
        "What the same plots say when they are read as strata, as clusters, as a walk along a grid, as counts with some measured, or against a check of them.",
        cautionLine("Estimate"),
      ]),
      heading("A6", "Margin of the volume, bf per acre", 2),
      down("A7", "Computed", [
        "The usual one, as if plots were drawn by chance",
        "From neighbors on the walk: plots in walking order",
      ]),
      heading("A10", "Clusters: plots taken in groups, the group as the unit", 7),
      heading("A15", "Counted on all points, measured on some, by single trees", 6),
      heading("A25", "The same by whole points: basal area of every point, volume of the measured ones", 8),
      heading("A30", "Check cruise: what the recheck on Points says of the same plots, bf per acre", 6),
      heading("A50", "Strata, volume in bf per acre", 8),
      heading(beside(AREA_AT, -2, 0), "Strata, basal area in ft2 per acre", 8),
      ...emptyWords.map(([at, says, when]) => across(at, "Note", [{ formula: `=IF(${when},"${says}","")` }])),
    ],
    spills: spills(),
  });

/** What stands in the place of an answer that this cruise does not have. */
const emptyWords = [
  ["A13", "No clusters: put the group of each plot under Cluster on Points.", `NOT(${hasClusters})`],
  [
    "A33",
    "No recheck yet: put what the check found under Recheck bf per ac on Points, for 2 plots or more.",
    enough(rechecks),
  ],
  ["A48", "No strata: name them on the sheet Design.", `NOT(${hasStrata})`],
] as const;

const one = (name: string, at: string, formula: string): SpillPlan => ({
  name,
  at,
  formula: `=IF(${enough(volumes)},"",${formula})`,
  rows: 1,
  columns: 1,
  formats: [formats.volume],
});

const measured = `(${column(TREES, tree.left)}="")*ISNUMBER(${column(TREES, tree.volume)})`;
/** Trees of points outside the tract go with them; those of points that were only counted are counted all the same. */
const inside = (amount: string) => `IF(${column(TREES, tree.left)}="Yes","",${amount})`;
/** A row with a diameter is one tree unless it says otherwise; a row without one is a count. */
const counts = inside(
  `IF(${column(TREES, tree.count)}="",IF(${column(TREES, tree.dbh)}="","",1),${column(TREES, tree.count)})`,
);

function spills(): readonly SpillPlan[] {
  const strata = (name: string, at: string, values: string): SpillPlan => ({
    name,
    at,
    formula: `=IF(${hasStrata},${call(
      "STRATASUMMARY",
      column(PLOTS, plot.stratumUsed),
      `IF(${column(PLOTS, plot.stratumUsed)}="","",${values})`,
      column(STRATA, stratum.stratum),
      column(STRATA, stratum.acres),
      named.confidence,
    )},"")`,
    rows: STRATA_ROOM,
    columns: 8,
    formats: [
      formats.general,
      formats.tenth,
      formats.tenth,
      formats.whole,
      formats.tenth,
      formats.tenth,
      formats.volume,
      formats.whole,
    ],
  });
  return [
    one(out.usualMargin, "B7", call("MARGINOFERROR", where(volumes, volumes), named.confidence)),
    one(out.walkingMargin, "B8", call("SYSTEMATICMARGIN", where(volumes, volumes), named.confidence)),
    {
      name: out.clusters,
      at: "A11",
      formula: `=IF(${hasClusters},${call("CLUSTERSUMMARY", where(column(PLOTS, plot.clusterUsed), volumes), where(volumes, volumes), named.confidence)},"")`,
      rows: 2,
      columns: 7,
      formats: [...estimateFormats, formats.whole, formats.whole],
    },
    {
      name: out.countMeasure,
      at: "A16",
      formula: `=IF(${named.method}<>"Point","Only for points with a gauge.",${call(
        "COUNTMEASURE",
        inside(column(TREES, tree.plot)),
        counts,
        column(PLOTS, plot.anyPoint),
        column(PLOTS, plot.sizeUsed),
        `IF(${measured},${column(TREES, tree.volume)},"")`,
        `IF(${measured},${call("BASALAREA", column(TREES, tree.dbh), named.units)},"")`,
        named.confidence,
        named.units,
      )})`,
      rows: 7,
      columns: 6,
      formats: [formats.general, formats.tenth, formats.tenth, formats.tenth, formats.tenth, formats.tenth],
      rowFormats: { 3: formats.volume, 4: formats.volume, 6: formats.volume },
    },
    {
      name: out.doubleSample,
      at: "A26",
      formula: `=IF(${enough(volumes)},"",${call(
        "DOUBLESAMPLE",
        where(areas, areas),
        where(areas, volumes),
        where(volumes, volumes),
        '"Ratio"',
        named.confidence,
      )})`,
      rows: 2,
      columns: 8,
      formats: [...estimateFormats, formats.tenth, formats.whole, formats.whole],
    },
    {
      name: out.recheck,
      at: "A31",
      formula: `=IF(${enough(rechecks)},"",${call("CHECKCRUISE", where(volumes, rechecks), where(rechecks, rechecks), named.confidence)})`,
      rows: 2,
      columns: 6,
      formats: [formats.whole, formats.volume, formats.volume, formats.volume, formats.volume, formats.general],
    },
    strata(out.strataVolume, "A51", volumes),
    strata(out.strataArea, beside(AREA_AT, -1, 0), areas),
  ];
}
