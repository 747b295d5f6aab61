import { beside, zoneAt } from "../address";
import { call, column } from "../formula";
import { formats } from "../formats";
import type { BlockPlan, SheetPlan, SpillPlan } from "../plan";
import { named, out, plot, PLOTS, tree, TREES } from "../tables";
import { LAST_ROW } from "../zones";
import { counting, drawing, hasClusters, hasStrata, sizes } from "./designArguments";
import { importance } from "./importance";
import { cautionLine, across, down, heading, sheetPlan, title } from "./sheetParts";
import { belowZero, designInWords, inWords, speciesBelowZero, tractInWords } from "./standWords";

export const STAND = "Stand";
const SPECIES_AT = "A30";
/** Rows of species that are looked through for a margin that says too little. */
const SPECIES_ROWS = 60;

/** An answer per acre, and the same for the whole tract beside it. */
interface Summary {
  readonly at: string;
  readonly name: string;
  readonly tractName: string;
  readonly perAcre: string;
  readonly wholeTract: string;
  readonly dbh: string;
  readonly volume: string;
}

const summaries: readonly Summary[] = [
  {
    at: "A8",
    name: out.summary,
    tractName: out.tract,
    perAcre: "All trees, per acre; volume in board feet by the log rule",
    wholeTract: "All trees, whole tract, bf",
    dbh: tree.dbh,
    volume: tree.volume,
  },
  {
    at: "A15",
    name: out.harvest,
    tractName: out.tractHarvest,
    perAcre: "Harvest (Take is not No), per acre; volume in board feet by the log rule, cull taken off",
    wholeTract: "Harvest, whole tract, bf",
    dbh: tree.harvestDbh,
    volume: tree.harvest,
  },
  {
    at: "A22",
    name: out.lumber,
    tractName: out.tractLumber,
    perAcre: "The same harvest sawn on your mill, per acre; volume in board feet of lumber",
    wholeTract: "Lumber from the harvest, whole tract, bf",
    dbh: tree.harvestDbh,
    volume: tree.lumber,
  },
];

/** Cells of the tract's totals that other sheets read: total and margin in board feet. */
export const tractCells = {
  harvest: { total: `${STAND}!$H$16`, margin: `${STAND}!$I$16`, low: `${STAND}!$J$16`, high: `${STAND}!$K$16` },
  lumber: { total: `${STAND}!$H$23`, margin: `${STAND}!$I$23`, low: `${STAND}!$J$23`, high: `${STAND}!$K$23` },
} as const;

/** The stand in numbers, each with its margin. */
export function standSheet(): SheetPlan {
  return sheetPlan({
    name: STAND,
    sheetClass: "presentation",
    frozenRows: 5,
    landscape: true,
    widths: [27, 13, 20, 12, 12, 12, 26, 28, 12, 12, 12],
    blocks: [
      title("Stand"),
      down("A2", "Computed", [{ formula: inWords() }, { formula: tractInWords(tractCells.harvest) }]),
      down("A4", "Note", [cautionLine("Estimate")]),
      down("A5", "Attention", [{ formula: belowZero(summaries.map(({ at }) => at)) }]),
      down("A6", "Computed", [{ formula: designInWords() }]),
      ...summaries.flatMap(headingsOf),
      heading("H11", "Further plots for your margin", 4),
      down("A28", "Attention", [{ formula: speciesBelowZero(SPECIES_AT, SPECIES_ROWS) }]),
      heading("H29", "By species: how much of the stand each is", 6),
      heading("A29", "By species, per acre; volume in board feet by the log rule", 7),
    ],
    spills: [
      ...summaries.flatMap(spillsOf),
      {
        name: out.morePlots,
        at: "H12",
        formula: furtherPlots(),
        rows: 1,
        columns: 1,
        formats: [formats.whole],
      },
      {
        name: out.importance,
        at: "H30",
        formula: importance,
        rows: LAST_ROW - zoneAt(SPECIES_AT).row,
        columns: 6,
        headingLines: 3,
        formats: [formats.general, ...Array<string>(5).fill(formats.tenth)],
      },
      {
        name: out.species,
        at: SPECIES_AT,
        formula: `=${call(
          "SPECIESTABLE",
          column(TREES, tree.plot),
          column(TREES, tree.species),
          counting(tree.dbh),
          column(TREES, tree.volume),
          column(PLOTS, plot.counted),
          named.method,
          sizes,
          column(TREES, tree.count),
          named.confidence,
          ...drawing,
          named.units,
        )}`,
        rows: LAST_ROW - zoneAt(SPECIES_AT).row,
        columns: 7,
        formats: [
          formats.general,
          formats.whole,
          formats.tenth,
          formats.tenth,
          formats.volume,
          formats.whole,
          formats.volume,
        ],
      },
    ],
  });
}

const perPlot = column(PLOTS, plot.volume);

const headingsOf = ({ at, perAcre, wholeTract }: Summary): readonly BlockPlan[] => [
  heading(beside(at, -1, 0), perAcre, 6),
  heading(beside(at, -1, 7), wholeTract, 4),
  across(beside(at, 0, 7), "Heading", ["Total", "Margin +/-", "Low", "High"]),
];

function spillsOf({ at, name, tractName, dbh, volume }: Summary): readonly SpillPlan[] {
  const value = beside(at, 4, 1);
  const margin = beside(at, 4, 2);
  return [
    {
      name,
      at,
      formula: `=${call(
        "STANDSUMMARY",
        column(TREES, tree.plot),
        counting(dbh),
        column(PLOTS, plot.counted),
        named.method,
        sizes,
        column(TREES, volume),
        column(TREES, tree.count),
        named.confidence,
        ...drawing,
        named.units,
      )}`,
      rows: 5,
      columns: 6,
      formats: [formats.general, formats.tenth, formats.tenth, formats.whole, formats.tenth, formats.tenth],
      rowFormats: { 4: formats.volume },
    },
    {
      name: tractName,
      at: beside(at, 1, 7),
      formula: `=IF(AND(ISNUMBER(${value}),${named.acres}<>""),${call("TRACTTOTAL", value, margin, named.acres, named.acresMargin)},"")`,
      rows: 1,
      columns: 4,
      formats: [formats.volume, formats.volume, formats.volume, formats.volume],
    },
  ];
}

/**
 * Further plots for the margin that is wanted. Where strata or clusters make the margin, the number of plots is taken
 * to grow with the square of how far the margin is off; a full tally asks for none.
 */
function furtherPlots(): string {
  const off = `(D12/${named.target})`;
  const scaled = `MAX(0,ROUNDUP(COUNT(${perPlot})*(${off}*${off}-1),0))`;
  const plain = call("MOREPLOTS", `FILTER(${perPlot},ISNUMBER(${perPlot}))`, named.target, named.confidence);
  return `=IF(OR(COUNT(${perPlot})<2,${named.method}="All"),"",IF(OR(${hasStrata},${hasClusters}),IF(ISNUMBER(D12),${scaled},""),${plain}))`;
}
