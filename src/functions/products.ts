import { answered } from "./shell/answers";
import { productTable as tableOf } from "./shell/productTable";
import { productTally } from "./shell/productTally";
import { oneNumber } from "./shell/readings";
import { confidenceOf } from "./shell/margins";
import { unitSystem } from "./shell/unitSystem";

/**
 * What the stand holds of each product per acre when every tree is cut into what pays best, each with a margin of error of its own.
 * @customfunction PRODUCTTABLE
 * @param plot Plot of each tallied tree: name or number.
 * @param species Common name or inventory code of each tree; not needed where logs were measured.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param height Total height of each tree, in feet (meters).
 * @param logs Merchantable height of each tree, in logs of 16 feet, half logs as 0.5.
 * @param products Products, one a row: name; smallest small end inside bark in inches (cm); shortest, longest and step of the lengths in feet (meters); log rule, Cubic or Cords; price in $ per MBF, cubic foot (cubic meter) or cord.
 * @param plots Every plot that was visited, those without trees too: names, or numbers other than 0.
 * @param method How trees were picked: "Point", "Fixed", "Strip" or "All".
 * @param size Basal area factor in square feet per acre (m2 per ha), or acres (ha) of a plot, strip or tract. One value, one for each plot, or two columns: least DBH and size of nested plots.
 * @param [measured] Height that the stems are drawn from: Total height or Logs; Both means total height. Left out: Total height.
 * @param [count] Trees that each row stands for: number of trees. Blank or left out: 1.
 * @param [cull_pct] Cull of each tree, in percent of every product. Left out: 0.
 * @param [form_class] Girard form class of each tree, in percent, used with logs. Left out: 78.
 * @param [boards] Boards wanted: thickness and width in inches (cm), and the price per thousand board feet in the last column. Left out: no lumber.
 * @param [kerf] Saw kerf, in inches (cm), used with boards.
 * @param [pattern] Sawing pattern, used with boards: Live, Cant, Around, Quarter or Best.
 * @param [realized_pct] Share of the best plan that the mill gets, in percent, used with boards. Left out: 100.
 * @param [confidence_pct] Confidence of the margins, in percent. Left out: 95.
 * @param [stratum] Stratum of each plot, beside the plot list: names or numbers. Left out: no strata.
 * @param [strata] Every stratum and its size: two columns, name and acres (ha). Left out: no strata.
 * @param [cluster] Cluster of each plot, beside the plot list, where plots were taken in groups: names or numbers. Left out: no clusters.
 * @param [population] How many plots would cover the tract, for fixed plots only: number of plots. Left out: no limit.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [wood] Wood of each whole stem in cubic feet (cubic meters), as a local volume table has it: the stem is then drawn to hold just that. Blank or left out: by the national equations.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: product, unit, volume, wood and value, each with its margin; then what is left in the woods and the whole.
 */
export function productTable(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  height: any[][],
  logs: any[][],
  products: any[][],
  plots: any[][],
  method: string,
  size: any[][],
  measured?: string,
  count?: any[][],
  cull_pct?: any[][],
  form_class?: any[][],
  boards?: any[][],
  kerf?: any,
  pattern?: string,
  realized_pct?: any,
  confidence_pct?: any,
  stratum?: any[][],
  strata?: any[][],
  cluster?: any[][],
  population?: any,
  division?: string,
  origin?: string,
  wood?: any[][],
  units?: string,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const stems = {
      plot,
      count,
      species,
      dbh,
      height,
      wood,
      logs,
      products,
      measured,
      boards,
      kerf,
      pattern,
      division,
      origin,
      units,
    };
    const tally = productTally({ ...stems, cull: cull_pct, formClass: form_class }, system);
    const realized = oneNumber(realized_pct, "Realized lumber", { unit: "%", low: 1, high: 100 }, 100) / 100;
    const cruise = { plot, dbh, plots, method, size, count, stratum, strata, cluster, population };
    return tableOf(cruise, { ...tally, realized }, confidenceOf(confidence_pct), system);
  });
}
