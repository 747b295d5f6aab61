import { call, column, thisRow } from "../formula";
import { named, NESTED, nested, PLOTS, plot, STRATA, stratum, tree, TREES } from "../tables";

/** Every stratum and its acres, as one block. */
const strataBlock = `${STRATA}[[${stratum.stratum}]:[${stratum.acres}]]`;
const nestedBlock = `${NESTED}[[${nested.least}]:[${nested.size}]]`;

/** The gauge or the plot size: nested plots when any are listed, else what stands beside each plot. */
export const sizes = `IF(COUNT(${column(NESTED, nested.size)})>0,${nestedBlock},${column(PLOTS, plot.sizeUsed)})`;

/** What makes each plot weigh its land in a mean: the last arguments of every table, before the units. */
export const weighting = [column(PLOTS, plot.stratum), strataBlock] as const;

/** A column of the tally without the trees of points outside the tract, or of points that were only counted. */
export const counting = (heading: string) => `IF(${column(TREES, tree.left)}<>"","",${column(TREES, heading)})`;

/** Only fixed plots have a number that would cover the tract; it may stand on Design while another method is tried. */
const population = `IF(${named.method}="Fixed",${named.population},"")`;

/** The same, and what a margin of error asks besides. */
export const drawing = [...weighting, column(PLOTS, plot.cluster), population] as const;

/** True in a cell when the cruise has strata, or clusters. */
export const hasStrata = `COUNTA(${column(STRATA, stratum.stratum)})>0`;
export const hasClusters = `COUNTA(${column(PLOTS, plot.cluster)})>0`;

const dbh = thisRow(TREES, tree.dbh);
const least = column(NESTED, nested.least);
/** The nested plot of the tree of this row: the last whose least diameter it reaches. */
const ownNest = `XLOOKUP(MAX(IF((${least}<=${dbh})*(${column(NESTED, nested.size)}<>""),${least},0)),${least},${column(NESTED, nested.size)},"")`;
const ownPlot = `XLOOKUP(${thisRow(TREES, tree.plot)},${column(PLOTS, plot.plot)},${column(PLOTS, plot.sizeUsed)},${named.size})`;
const ownMethod = `IF(${named.method}="Point and fixed",IF(${dbh}<MAX(${least}),"Fixed","Point"),${named.method})`;

/** Trees per acre that the tree of this row stands for on its own plot, by the way it was picked. */
export const treesPerAcreHere = `=IF(${dbh}="","",${call("TREESPERACRE", dbh, ownMethod, `IF(COUNT(${column(NESTED, nested.size)})>0,${ownNest},${ownPlot})`, named.units)})`;
