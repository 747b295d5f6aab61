import { checkList as listOf } from "./shell/checkList";
import { plotChecks } from "./shell/plotChecks";
import { treeChecks } from "./shell/treeChecks";

/**
 * What looks wrong with each row of a tally, in one plain sentence; blank when nothing does. Give whole columns, so that a tree can be held against the others.
 * @customfunction CHECKTREES
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param logs Height of each tree, in 16-foot logs and half logs.
 * @param plots Every plot that was visited: names, or numbers other than 0.
 * @param species_list Every species of your list: codes or names.
 * @param [dbh_min] Least diameter that belongs in the tally, in inches (cm). Left out: 1.
 * @param [dbh_max] Largest diameter to expect, in inches (cm). Left out: 60.
 * @param [volume] Volume of each tree, in board feet. Left out: volumes are not compared.
 * @param [distance] Level distance of each tree from the middle of its plot where it was taped, in feet (m). Left out: none was.
 * @param [method] How trees were picked: Point or Fixed. Left out: distances are not checked.
 * @param [size] Basal area factor in square feet per acre (m2/ha), or plot size in acres (ha): one for all, or one beside each of the plots. Left out: distances are not checked.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns A sentence or a blank for each row, in the shape that was given.
 */
export function checkTrees(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  logs: any[][],
  plots: any[][],
  species_list: any[][],
  dbh_min?: any,
  dbh_max?: any,
  volume?: any[][],
  distance?: any[][],
  method?: string,
  size?: any[][],
  units?: string,
): any[][] {
  return treeChecks({
    plot,
    species,
    dbh,
    logs,
    plots,
    speciesList: species_list,
    dbhMin: dbh_min,
    dbhMax: dbh_max,
    volume,
    distance,
    method,
    size,
    units,
  });
}

/**
 * What looks wrong with each plot of a list, in one plain sentence; blank when nothing does.
 * @customfunction CHECKPLOTS
 * @param plot Plot of each tallied tree: name or number.
 * @param species Species of each tree: your own code or name.
 * @param dbh Diameter at breast height of each tree, in inches (cm).
 * @param logs Height of each tree, in 16-foot logs and half logs.
 * @param plots Every plot that was laid out: names, or numbers other than 0.
 * @param visited Whether each plot was visited: Yes, No or blank.
 * @param none Whether each plot was visited and found without trees: Yes or blank.
 * @returns A sentence or a blank for each plot, in the shape of the plot list.
 */
export function checkPlots(
  plot: any[][],
  species: any[][],
  dbh: any[][],
  logs: any[][],
  plots: any[][],
  visited: any[][],
  none: any[][],
): any[][] {
  return plotChecks({ plot, species, dbh, logs, plots, visited, none });
}

/**
 * All that the checks ask to look at, in one list: what is open first, then what was kept, with the reason.
 * @customfunction CHECKLIST
 * @param plots Every plot: names, or numbers other than 0.
 * @param plot_check What looks wrong with each plot.
 * @param plot_reason Why each plot was kept as it is, where it was.
 * @param plot Plot of each tree: name or number.
 * @param tree_check What looks wrong with each tree.
 * @param tree_reason Why each tree was kept as it is, where it was.
 * @param [log] Number of each log. Left out: no logs.
 * @param [log_check] What looks wrong with each log.
 * @param [board_log] Log of each line of boards. Left out: no boards.
 * @param [board_check] What looks wrong with each line of boards.
 * @param [product] Product of each price. Left out: no prices.
 * @param [price_check] What looks wrong with each price.
 * @returns A table: sheet, where, what to look at and why it was kept.
 */
export function checkList(
  plots: any[][],
  plot_check: any[][],
  plot_reason: any[][],
  plot: any[][],
  tree_check: any[][],
  tree_reason: any[][],
  log?: any[][],
  log_check?: any[][],
  board_log?: any[][],
  board_check?: any[][],
  product?: any[][],
  price_check?: any[][],
): any[][] {
  return listOf([
    { sheet: "Points", names: plots, says: plot_check, reasons: plot_reason, where: (name) => `Point ${name}` },
    {
      sheet: "Trees",
      names: plot,
      says: tree_check,
      reasons: tree_reason,
      where: (name, row) => (name === "" ? `Tree in row ${row}` : `Point ${name}, tree in row ${row}`),
    },
    {
      sheet: "Logs",
      names: log,
      says: log_check,
      where: (name, row) => (name === "" ? `Log in row ${row}` : `Log ${name}`),
    },
    { sheet: "Boards", names: board_log, says: board_check, where: (_, row) => `Board in row ${row}` },
    { sheet: "Prices", names: product, says: price_check, where: (name, row) => name || `Price in row ${row}` },
  ]);
}
