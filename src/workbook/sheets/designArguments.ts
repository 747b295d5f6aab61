import { column } from "../formula";
import { named, NESTED, nested, PLOTS, plot, STRATA, stratum } from "../tables";

/** Every stratum and its acres, as one block. */
const strataBlock = `${STRATA}[[${stratum.stratum}]:[${stratum.acres}]]`;
const nestedBlock = `${NESTED}[[${nested.least}]:[${nested.size}]]`;

/** The gauge or the plot size: nested plots when any are listed, else what stands beside each plot. */
export const sizes = `IF(COUNT(${column(NESTED, nested.size)})>0,${nestedBlock},${column(PLOTS, plot.sizeUsed)})`;

/** What makes each plot weigh its land in a mean: the last arguments of every table, before the units. */
export const weighting = [column(PLOTS, plot.stratum), strataBlock] as const;

/** The same, and what a margin of error asks besides. */
export const drawing = [...weighting, column(PLOTS, plot.cluster), named.population] as const;

/** True in a cell when the cruise has strata, or clusters. */
export const hasStrata = `COUNTA(${column(STRATA, stratum.stratum)})>0`;
export const hasClusters = `COUNTA(${column(PLOTS, plot.cluster)})>0`;
