import { buckHabits as habitsOf } from "../core/value/buckHabits";
import { buckPlan as planOf } from "../core/value/buckPlan";
import { answered, spilled } from "./shell/answers";
import { buckOrder, volumeUnits } from "./shell/buckOrder";
import { saidIn } from "./shell/saidIn";

/**
 * The best-paying way to cut a standing tree into the products on a list.
 * @customfunction BUCKPLAN
 * @param species Common name or inventory code of the species; not needed where logs are given.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip it has or had, in feet (meters when metric); blank where logs are given.
 * @param products Products, one a row: name; smallest small end inside bark in inches (cm); shortest, longest and step of the lengths in feet (meters); log rule, cubic formula such as Smalian, or Cubic; price in $ per MBF, or per cubic foot (cubic meter).
 * @param [stump_height] Height of the stump, in feet (meters when metric). Left out or 0: 1 foot.
 * @param [trim] Trim left on each log, in feet (meters when metric). Left out: 0.33 feet.
 * @param [cull_from] Height, or a column of them, at which rot, a crook or a break begins, in feet (meters when metric). Left out: the ground.
 * @param [cull_to] Height, or a column of them, at which each of these ends; the same as its beginning for a crook. Left out: the tip, or no such stretch at all.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [logs] Merchantable height in logs of 16 feet, instead of the total height: the stem is then drawn by its form class.
 * @param [form_class] Girard form class, in percent, used with logs. Left out or 0: 78.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns A heading row, then one row a log, butt log first: log, from, to, product, small end, volume, value, length and large end.
 */
export function buckPlan(
  species: any,
  dbh: any,
  height: any,
  products: any[][],
  stump_height?: any,
  trim?: any,
  cull_from?: any[][],
  cull_to?: any[][],
  division?: string,
  origin?: string,
  logs?: any,
  form_class?: any,
  units?: string,
): any[][] {
  return answered(() => {
    const given = { species, dbh, height, products, stump_height, trim, cull_from, cull_to };
    const { order, system } = buckOrder({ ...given, division, origin, logs, form_class, units });
    const { diameter, distance, cubic } = system;
    const header = [
      "Log",
      `From ${distance.name}`,
      `To ${distance.name}`,
      "Product",
      `Small end ${diameter.name}`,
      `Volume ${volumeUnits(order.products, system)}`,
      "Value $",
      `Length ${distance.name}`,
      `Large end ${diameter.name}`,
    ];
    const { stem } = order;
    if (!stem) return spilled(header, [["No trees yet"]]);
    return spilled(
      header,
      saidIn(
        system,
        planOf,
      )({ ...order, stem }).map(({ from, to, product, length, smallEnd, volume, value }, place) => [
        place + 1,
        from * distance.perOurs,
        to * distance.perOurs,
        product.name,
        smallEnd * diameter.perOurs,
        product.measure.unit === "ft3" ? volume * cubic.perOurs : volume,
        value,
        length * distance.perOurs,
        stem.diameterAt(from) * diameter.perOurs,
      ]),
    );
  });
}

/**
 * The best-paying way to cut a standing tree beside habits of cutting it: every log of one length, or as long as fits.
 * @customfunction BUCKHABITS
 * @param species Common name or inventory code of the species; not needed where logs are given.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip it has or had, in feet (meters when metric); blank where logs are given.
 * @param products Products, one a row: name; smallest small end inside bark in inches (cm); shortest, longest and step of the lengths in feet (meters); log rule, cubic formula such as Smalian, or Cubic; price in $ per MBF, or per cubic foot (cubic meter).
 * @param [stump_height] Height of the stump, in feet (meters when metric). Left out or 0: 1 foot.
 * @param [trim] Trim left on each log, in feet (meters when metric). Left out: 0.33 feet.
 * @param [cull_from] Height, or a column of them, at which rot, a crook or a break begins, in feet (meters when metric). Left out: the ground.
 * @param [cull_to] Height, or a column of them, at which each of these ends; the same as its beginning for a crook. Left out: the tip, or no such stretch at all.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [logs] Merchantable height in logs of 16 feet, instead of the total height: the stem is then drawn by its form class.
 * @param [form_class] Girard form class, in percent, used with logs. Left out or 0: 78.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns A heading row, the best plan, then one row a habit: way, logs, value, and how far below the best, in $ and percent.
 */
export function buckHabits(
  species: any,
  dbh: any,
  height: any,
  products: any[][],
  stump_height?: any,
  trim?: any,
  cull_from?: any[][],
  cull_to?: any[][],
  division?: string,
  origin?: string,
  logs?: any,
  form_class?: any,
  units?: string,
): any[][] {
  return answered(() => {
    const given = { species, dbh, height, products, stump_height, trim, cull_from, cull_to };
    const { order, system } = buckOrder({ ...given, division, origin, logs, form_class, units });
    const header = ["Way to cut", "Logs", "Value $", "Below best $", "Below best pct"];
    const { stem } = order;
    if (!stem) return spilled(header, [["No trees yet"]]);
    const best = saidIn(system, planOf)({ ...order, stem });
    const most = best.reduce((sum, { value }) => sum + value, 0);
    return spilled(header, [
      ["Best plan", best.length, most, 0, 0],
      ...habitsOf({ ...order, stem }).map(({ length, logs: cut, value }) => [
        length === undefined
          ? "As long as fits"
          : `All ${Number((length * system.distance.perOurs).toFixed(2))} ${system.distance.name}`,
        cut.length,
        value,
        most - value,
        (100 * (most - value)) / most,
      ]),
    ]);
  });
}
