import { answered } from "./shell/answers";
import { countTable } from "./shell/countTable";
import { readCounts } from "./shell/countTally";
import { confidenceOf } from "./shell/margins";
import { unitSystem } from "./shell/unitSystem";

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum CountUnits {
  /** Square feet, acres */
  imperial = "imperial",
  /** Square meters, hectares */
  metric = "metric",
}

/**
 * Volume per acre where trees were counted on all points and some of them measured, with its margin of error.
 * @customfunction COUNTMEASURE
 * @param plot Point of each row: name or number.
 * @param counted_trees Trees that the row stands for: number of trees. Blank on a measured tree: 1; on any other row: none.
 * @param plots Every point that was visited, those without trees too: names, or numbers other than 0.
 * @param baf Basal area factor, in square feet per acre (m2 per ha): one value, or one for each point.
 * @param volume Volume of each measured tree, in any one unit such as board feet; blank on a row of counted trees.
 * @param tree_basal_area Basal area of each measured tree, in square feet (m2); blank on a row of counted trees.
 * @param [confidence_pct] Confidence of the margins, in percent. Left out: 95.
 * @param [units] "imperial" or "metric". Left out: imperial.
 * @returns A table: basal area, volume for basal area and volume per acre, each with its margin; a warning where whole points were measured.
 */
export function countMeasure(
  plot: any[][],
  counted_trees: any[][],
  plots: any[][],
  baf: any[][],
  volume: any[][],
  tree_basal_area: any[][],
  confidence_pct?: any,
  units?: CountUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const tally = readCounts({ plot, counted: counted_trees, plots, baf, volume, treeArea: tree_basal_area }, system);
    return countTable(tally, confidenceOf(confidence_pct), system);
  });
}
