import { answered, eachCell, spilled } from "./shell/answers";
import { felledTrees } from "./shell/felledTrees";
import { fitRows, localTableIn } from "./shell/fitCells";
import { chosenOr, measuredDbh, measuredIn } from "./shell/measuredIn";
import { asCells } from "./shell/readings";
import { tableOfVolumes } from "./shell/tableOfVolumes";
import { unitSystem } from "./shell/unitSystem";
import { localForms } from "../core/tree/local";
import { combinedVariable } from "../core/tree/local/combinedVariable";
import { fitLocalTable } from "../core/tree/local/fitLocalTable";
import { localVolume as volumeOf } from "../core/tree/local/localVolume";

/**
 * Shapes of a local volume table.
 * @customenum {string}
 */
export enum LocalFormName {
  /** V = a + b D2 H: a straight line over the diameter squared times the height. */
  Combined = "Combined variable",
  /** V = a D^b H^c: powers of diameter and height, fitted in logarithms. */
  Powers = "Powers of D and H",
}

/**
 * A volume equation fitted by least squares to trees that you felled and measured, with its error.
 * @customfunction LOCALFIT
 * @param dbh Diameters at breast height of the felled trees, in inches (cm when metric).
 * @param height Their heights, total or merchantable but all of one kind, in feet (meters when metric).
 * @param volume Their volumes, all in one unit; the table gives volumes in the same unit.
 * @param [form] Shape: Combined variable or Powers of D and H. Left out: Combined variable.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns A heading row, then the coefficients, the error and the sizes that the table is good for.
 */
export function localFit(
  dbh: any[][],
  height: any[][],
  volume: any[][],
  form?: LocalFormName,
  units?: string,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const trees = felledTrees({ dbh, height, volume }, system);
    const header = ["Local table", "Value"];
    if (trees.length === 0) return spilled(header, [["No trees yet"]]);
    return spilled(header, fitRows(fitLocalTable(chosenOr("Form", form, localForms, combinedVariable), trees), system));
  });
}

/**
 * Volume of a standing tree, or of each tree of a column, by a local volume table, in place of a general equation.
 * @customfunction LOCALVOLUME
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Height, measured as on the felled trees, in feet (meters when metric).
 * @param fit The answer of LOCALFIT, both of its columns.
 * @param [units] Units: imperial or metric, the same as in LOCALFIT. Left out: imperial.
 * @returns Volume in the unit of the felled trees, in the shape that was given; none beyond the sizes that were felled.
 */
export function localVolume(dbh: any[][], height: any[][], fit: any[][], units?: string): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const table = localTableIn(asCells(fit), system);
    const { diameter, distance } = system;
    return eachCell(
      {
        dbh: measuredDbh(dbh, system),
        height: measuredIn(height, "Height", distance, (feet) => feet, 1, 400),
      },
      (tree) => volumeOf(table, tree.dbh * diameter.perOurs, tree.height * distance.perOurs),
    );
  });
}

/**
 * A local volume table to read from: volume by diameter and height, over the sizes that were felled.
 * @customfunction LOCALTABLE
 * @param fit The answer of LOCALFIT, both of its columns.
 * @param [dbh_step] Step of the diameters, in inches (cm when metric). Left out: 2 inches (5 cm).
 * @param [height_step] Step of the heights, in feet (meters when metric). Left out: 10 feet (3 meters).
 * @param [units] Units: imperial or metric, the same as in LOCALFIT. Left out: imperial.
 * @returns A row of heights, then a row for each diameter; blank where the table gives nothing.
 */
export function localTable(fit: any[][], dbh_step?: any, height_step?: any, units?: string): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { header, rows } = tableOfVolumes(localTableIn(asCells(fit), system), { dbh_step, height_step }, system);
    return spilled(header, rows);
  });
}
