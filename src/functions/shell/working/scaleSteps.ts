import type { Step } from "../../../core/basis/step";
import type { LogRule } from "../../../core/log/logRule";
import { scaleWorking } from "../../../core/log/scaleWorking";
import { deductionOf, diameterOf, diameterOrNone, lengthOf } from "../logArguments";
import { saidIn } from "../saidIn";
import { conventionsOf } from "../scaleConventions";
import type { UnitSystem } from "../unitSystem";
import { given, intoOurs } from "./working";

/**
 * The way to a log's net scale by a rule or a card: its own arguments without the rule, in their order.
 * @throws InvalidInput and OutOfRange as the function itself does
 */
export function scaleSteps(
  by: LogRule,
  [diameter, length, deduction, round, longestLength, largeEnd, diameterRounding]: readonly unknown[],
  system: UnitSystem,
): readonly Step[] {
  const { diameter: across, distance: along } = system;
  const { rounding, longest, rounderOf } = conventionsOf({ round, longest: longestLength, diameterRounding }, system);
  const butt = given(diameterOrNone(largeEnd, "Large end", system));
  const log = {
    diameter: given(diameterOf(diameter, "Diameter", system)),
    length: given(lengthOf(length, system)),
    ...(butt !== 0 && { largeEnd: butt }),
  };
  const taken = given(deductionOf(deduction));
  return [
    ...intoOurs("Diameter", log.diameter, across, "in"),
    ...intoOurs("Length", log.length, along, "ft"),
    ...saidIn(system, scaleWorking)(by, log, taken, rounding, longest, rounderOf(1)),
  ];
}
