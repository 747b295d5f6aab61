import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, EntryRule } from "../plan";
import { named, plot, PLOTS, tree, TREES } from "../tables";
import { ENLARGED, strataNames } from "./design";
import { asked, yesOrNo } from "./sheetParts";

const here = (heading: string) => thisRow(PLOTS, heading);
const oneOf = (...choices: readonly string[]): EntryRule => ({
  kind: "list",
  choices,
  strict: false,
  message: `${choices.join(", ")} or blank.`,
});

const sweeps = `IF(${here(plot.sweep)}="Half",2,IF(${here(plot.sweep)}="Quarter",4,1))`;
const isPoint = `${named.method}="Point"`;
/** Half a sweep sees half the trees: its factor is twice as large, or its plot half as large. */
const swept = (size: string) => `IF(${isPoint},${size}*${sweeps},${size}/${sweeps})`;
/** Parts of a tract that is tallied in full have acres of their own; those of all of it would be wrong in silence. */
const partOfTract = `AND(${named.method}="All",COUNTA(${column(PLOTS, plot.plot)})>1)`;

const onPlot = `${column(TREES, tree.plot)},${here(plot.plot)}`;
const withDbh = `${onPlot},${column(TREES, tree.dbh)},">0"`;
/** Trees of a point that was only counted: its counts, and one for each row with a DBH that gives no count. */
const counted = `(SUMIF(${onPlot},${column(TREES, tree.count)})+COUNTIFS(${withDbh})-COUNTIFS(${withDbh},${column(TREES, tree.count)},">0"))`;

/** What differs from plot to plot in a cruise that is more than plain points, and what follows from it. */
export const plotDesignColumns: readonly ColumnPlan[] = [
  {
    heading: plot.stratum,
    width: 12,
    rule: { kind: "listOf", range: strataNames, strict: false, message: "A stratum from the sheet Design." },
  },
  { heading: plot.cluster, width: 9 },
  { heading: plot.size, width: 9, rule: asked(0.0001, 10_000, "Basal area factor or acres; blank is that of Setup.") },
  { heading: plot.sweep, width: 9, rule: oneOf("Full", "Half", "Quarter") },
  { heading: plot.outside, width: 9, rule: yesOrNo },
  { heading: plot.kind, width: 10, rule: oneOf("Measure", "Count") },
  { heading: plot.recheck, width: 17, format: formats.volume, rule: asked(0, 1e6, "Board feet per acre.") },
  {
    heading: plot.sizeUsed,
    width: 10,
    formula: `=IF(${here(plot.plot)}="","",IF(${here(plot.size)}<>"",${swept(here(plot.size))},IF(${partOfTract},"",${swept(named.size)})))`,
  },
  {
    heading: plot.radius,
    width: 14,
    format: formats.tenth,
    formula: `=IF(OR(${here(plot.plot)}="",${named.method}<>"Fixed",${here(plot.sizeUsed)}=""),"",${call(
      "PLOTRADIUS",
      here(plot.sizeUsed),
      `IF(AND(${named.slopeWay}="${ENLARGED}",${here(plot.slope)}<>""),${here(plot.slope)},0)`,
      named.units,
    )})`,
  },
  {
    heading: plot.stratumUsed,
    width: 15,
    formula: `=IF(OR(${here(plot.counted)}="",${here(plot.stratum)}=""),"",${here(plot.stratum)})`,
  },
  {
    heading: plot.clusterUsed,
    width: 15,
    formula: `=IF(OR(${here(plot.counted)}="",${here(plot.cluster)}=""),"",${here(plot.cluster)})`,
  },
  {
    heading: plot.anyPoint,
    width: 14,
    formula: `=IF(AND(${here(plot.kind)}="Count",${here(plot.outside)}<>"Yes"),${here(plot.plot)},${here(plot.counted)})`,
  },
  {
    heading: plot.basalArea,
    width: 17,
    format: formats.tenth,
    formula: `=IF(${here(plot.anyPoint)}="","",IF(${here(plot.kind)}="Count",${counted}*${here(plot.sizeUsed)},${here(plot.tallyArea)}))`,
  },
];
