import { feet, percent, type Percent } from "../core/basis/units";
import { USUAL_FORM_CLASS } from "../core/tree/formClass";
import { stemEquations, STUMP } from "../core/tree/national/stemEquations";
import { buckPlan as planOf, type Product } from "../core/value/buckPlan";
import { standingStem } from "../core/value/standingStem";
import { treeLumber as lumberOf } from "../core/value/treeLumber";
import { answered, eachCell, spilled } from "./shell/answers";
import { standOf, totalHeight } from "./shell/heightTrees";
import { boundsIn, measuredDbh, single } from "./shell/measuredIn";
import { productsIn } from "./shell/products";
import { asCells, measured, oneNumber, optionalNumber, type Cells } from "./shell/readings";
import { boardOrder } from "./shell/sawingArguments";
import { speciesReading } from "./shell/speciesReading";
import { unitSystem, type UnitSystem } from "./shell/unitSystem";

/**
 * Board feet of lumber that a standing tree should saw out to when each of its logs is sawn by the best plan.
 * @customfunction TREELUMBER
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param logs Merchantable height, in logs of 16 feet, half logs as 0.5.
 * @param boards Boards wanted: thickness and width in inches (cm when metric), and the price per thousand board feet in the last column.
 * @param kerf Saw kerf, in inches (cm when metric).
 * @param pattern Sawing pattern: Live, Cant, Around, Quarter or Best.
 * @param [form_class] Girard form class, in percent. Left out or 0: 78.
 * @param [units] Units: imperial or metric. Left out: imperial. The answer stays in board feet.
 * @returns Board feet of lumber from straight, sound logs, in the shape that was given.
 */
export function treeLumber(
  dbh: any[][],
  logs: any[][],
  boards: any[][],
  kerf: any,
  pattern: string,
  form_class?: any,
  units?: string,
): any[][] {
  return answered(() => {
    const lumber = remembered(asCells(boards), kerf, pattern, units);
    return eachCell(
      {
        dbh: measuredDbh(dbh, unitSystem(units)),
        logs: measured(logs, "Logs", (count) => count, { unit: "logs of 16 ft", low: 0.1, high: 10 }),
        formClass: optionalNumber<Percent>(form_class, "Form class", formClass, { unit: "%", low: 0, high: 100 }),
      },
      lumber,
    );
  });
}

const formClass = (value: number): Percent => (value === 0 ? USUAL_FORM_CLASS : percent(value));

type Lumber = ReturnType<typeof lumberOf>;

/** A column of one-cell calls orders the same boards in every row: the last order is kept, with the plans it has made. */
let last: { readonly order: string; readonly lumber: Lumber } | undefined;

function remembered(boards: Cells, kerf: unknown, pattern: unknown, units: unknown): Lumber {
  const order = JSON.stringify([boards, kerf, pattern, units]);
  if (last?.order !== order) {
    last = { order, lumber: lumberOf(boardOrder({ boards, kerf, pattern, units })) };
  }
  return last.lumber;
}

/** What is left on a log beyond the length that is bought, when nothing is said: about 4 inches. [ft] */
const USUAL_TRIM = 0.33;

/**
 * The best-paying way to cut a standing tree into the products on a list.
 * @customfunction BUCKPLAN
 * @param species Common name or inventory code of the species.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip, in feet (meters when metric).
 * @param products Products, one a row: name; smallest small end inside bark in inches (cm); shortest, longest and step of the lengths in feet (meters); log rule, cubic formula such as Smalian, or Cubic; price in $ per MBF, or per cubic foot (cubic meter).
 * @param [stump_height] Height of the stump, in feet (meters when metric). Left out or 0: 1 foot.
 * @param [trim] Trim left on each log, in feet (meters when metric). Left out: 0.33 feet.
 * @param [cull_from] Height at which a stretch begins that cannot be sold, in feet (meters when metric). Left out: the ground.
 * @param [cull_to] Height at which that stretch ends, in feet (meters when metric). Left out: the tip, or no such stretch at all.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns A heading row, then one row a log, butt log first: log, from, to, product, small end, volume and value.
 */
export function buckPlan(
  species: any,
  dbh: any,
  height: any,
  products: any[][],
  stump_height?: any,
  trim?: any,
  cull_from?: any,
  cull_to?: any,
  division?: string,
  origin?: string,
  units?: string,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { diameter, distance } = system;
    const along = (given: unknown, what: string, low: number, high: number, leftOut: number) =>
      feet(oneNumber(given, what, boundsIn(distance, low, high), leftOut * distance.perOurs) / distance.perOurs);

    const stand = standOf(division, origin);
    const equations = single(speciesReading(species, (one) => stemEquations(one, stand)));
    const tree = { dbh: single(measuredDbh(dbh, system)), height: single(totalHeight(height, system)) };
    const wanted = productsIn(products, system);
    const header = [
      "Log",
      `From ${distance.name}`,
      `To ${distance.name}`,
      "Product",
      `Small end ${diameter.name}`,
      `Volume ${volumeUnits(wanted, system)}`,
      "Value $",
    ];
    if (!equations || tree.dbh === undefined || tree.height === undefined) return spilled(header, [["No trees yet"]]);

    const cullFrom = along(cull_from, "Cull from", 0.1, 400, 0);
    const cullTo = along(cull_to, "Cull to", 0.1, 400, 0);
    const cull = { from: cullFrom, to: cullTo === 0 ? tree.height : cullTo };
    const logs = planOf({
      stem: standingStem(equations, { dbh: tree.dbh, height: tree.height }),
      products: wanted,
      stump: along(stump_height, "Stump height", 0.1, 20, STUMP),
      trim: trimOf(trim, system),
      ...(cullFrom + cullTo > 0 && { cull }),
    });
    return spilled(
      header,
      logs.map(({ from, to, product, smallEnd, volume, value }, place) => [
        place + 1,
        from * distance.perOurs,
        to * distance.perOurs,
        product.name,
        smallEnd * diameter.perOurs,
        product.measure.unit === "ft3" ? volume * system.cubic.perOurs : volume,
        value,
      ]),
    );
  });
}

/** A trim of 0 is no trim; only what is left out is the usual one. */
const trimOf = (given: unknown, { distance }: UnitSystem) =>
  single(
    optionalNumber(
      given,
      "Trim",
      (value) => feet(value / distance.perOurs),
      boundsIn(distance, 0, 5),
      USUAL_TRIM * distance.perOurs,
    ),
  ) ?? feet(USUAL_TRIM);

/** "bf", "ft3" or both, by what the products are measured in. */
function volumeUnits(products: readonly Product[], { cubic }: UnitSystem): string {
  const units = new Set(products.map(({ measure }) => (measure.unit === "ft3" ? cubic.name : measure.unit)));
  return [...units].sort().join(" or ") || "bf";
}
