import { percent, type Percent } from "../core/basis/units";
import { USUAL_FORM_CLASS } from "../core/tree/formClass";
import { treeLumber as lumberOf } from "../core/value/treeLumber";
import { answered, eachCell } from "./shell/answers";
import { measuredDbh } from "./shell/measuredIn";
import { asCells, measured, optionalNumber, type Cells } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { boardOrder } from "./shell/sawingArguments";
import { unitSystem } from "./shell/unitSystem";

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
      saidIn(unitSystem(units), lumber),
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
