import type { Feet, Inches, Percent } from "../../core/basis/units";
import { grossScale } from "../../core/log/grossScale";
import type { LogRule } from "../../core/log/logRule";
import { netScale } from "../../core/log/netScale";
import { eachCell, sameShape } from "./answers";
import { deductionOf, diameterOf, diameterOrNone, lengthOf } from "./logArguments";
import { isLeftOut, type Cells, type Reading } from "./readings";
import { saidIn } from "./saidIn";
import type { Conventions } from "./scaleConventions";
import type { UnitSystem } from "./unitSystem";

/** Logs as the cells gave them. */
export interface GivenLogs {
  readonly diameter: unknown;
  readonly length: unknown;
  readonly deduction: unknown;
  readonly largeEnd: unknown;
}

/** Logs ready to be read. */
export interface LogReadings {
  readonly diameter: Reading<Inches>;
  readonly length: Reading<Feet>;
  readonly deduction: Reading<Percent>;
  /** Left out where no butt was given at all. A blank one reads as 0. */
  readonly largeEnd?: Reading<Inches>;
}

export const logReadings = (given: GivenLogs, system: UnitSystem): LogReadings => ({
  diameter: diameterOf(given.diameter, "Diameter", system),
  length: lengthOf(given.length, system),
  deduction: deductionOf(given.deduction),
  ...(!isLeftOut(given.largeEnd) && { largeEnd: diameterOrNone(given.largeEnd, "Large end", system) }),
});

/** Net scale of each log under a rule and the conventions of its buyer. */
export function netScales(
  by: LogRule,
  { largeEnd, ...logs }: LogReadings,
  { rounding, longest, rounderOf }: Conventions,
  system: UnitSystem,
): Cells {
  const { rows, columns } = sameShape([...Object.values(logs), ...(largeEnd ? [largeEnd] : [])]);
  const toWhole = rounderOf(rows * columns);
  if (!largeEnd) {
    return eachCell(
      logs,
      saidIn(system, (log) => netScale(by, grossScale(by, log, rounding, longest, toWhole), log.deduction, rounding)),
    );
  }
  return eachCell(
    { ...logs, largeEnd },
    saidIn(system, ({ deduction, largeEnd: butt, ...ends }) => {
      const log = butt === 0 ? ends : { ...ends, largeEnd: butt };
      return netScale(by, grossScale(by, log, rounding, longest, toWhole), deduction, rounding);
    }),
  );
}
