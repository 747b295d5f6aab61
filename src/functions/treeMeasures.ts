import { boardFeet, dollarsPerMbf, inches, percent } from "../core/basis/units";
import { formClass as formClassOf } from "../core/tree/formClass";
import { insideBark as withoutBark, LEAST_BARK_RATIO } from "../core/tree/insideBark";
import { treeValue as valueOf } from "../core/value/treeValue";
import { answered, eachCell } from "./shell/answers";
import { measured, optionalNumber } from "./shell/readings";

/**
 * Girard form class: the diameter inside bark at the top of the first 16-foot log as a share of DBH.
 * @customfunction FORMCLASS
 * @param top_of_first_log_inside_bark Diameter inside bark 17.3 feet above ground, in inches or cm.
 * @param dbh Diameter at breast height, over bark, in the same unit.
 * @returns Form class in percent, in the shape that was given.
 */
export function formClass(top_of_first_log_inside_bark: any[][], dbh: any[][]): any[][] {
  const bounds = { unit: "in or cm", low: 0.1, high: 250 };
  return answered(() =>
    eachCell(
      {
        top: measured(top_of_first_log_inside_bark, "Top of first log", inches, bounds),
        dbh: measured(dbh, "DBH", inches, bounds),
      },
      ({ top, dbh }) => formClassOf(top, dbh),
    ),
  );
}

/**
 * Diameter inside bark, from the diameter outside bark and the bark ratio of the species.
 * @customfunction INSIDEBARK
 * @param diameter_outside Diameter outside bark, in inches or cm.
 * @param bark_ratio Diameter inside bark divided by diameter outside bark, such as 0.92.
 * @returns Diameter inside bark, in the unit and the shape that was given.
 */
export function insideBark(diameter_outside: any[][], bark_ratio: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        outside: measured(diameter_outside, "Diameter outside bark", inches, { unit: "in or cm", low: 0.1, high: 250 }),
        ratio: measured(bark_ratio, "Bark ratio", Number, { unit: "", low: LEAST_BARK_RATIO, high: 1 }),
      },
      ({ outside, ratio }) => withoutBark(outside, ratio),
    ),
  );
}

/**
 * Value of a standing tree at a price per thousand board feet.
 * @customfunction TREEVALUE
 * @param volume Volume of the tree, in board feet by the log rule that the price is for.
 * @param price_per_mbf Price, in $ per MBF (thousand board feet).
 * @param [cull_pct] Share of the volume that is not paid for, in percent. Left out: 0.
 * @returns Value in $, in the shape that was given.
 */
export function treeValue(volume: any[][], price_per_mbf: any[][], cull_pct?: any[][]): any[][] {
  return answered(() =>
    eachCell(
      {
        volume: measured(volume, "Volume", boardFeet, { unit: "bf", low: 0, high: 1e6 }),
        price: measured(price_per_mbf, "Price", dollarsPerMbf, { unit: "$ per MBF", low: 0, high: 1e6 }),
        cull: optionalNumber(cull_pct, "Cull", percent, { unit: "%", low: 0, high: 100 }),
      },
      ({ volume, price, cull }) => valueOf(volume, price, cull),
    ),
  );
}
