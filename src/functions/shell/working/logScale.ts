import { diameterRoundings, notToWhole, rounderFor } from "../../../core/log/diameterRounding";
import { logRule } from "../../../core/log/findLogRule";
import { asTheRuleDoes, scaleRoundings } from "../../../core/log/scaleRounding";
import { scaleWorking } from "../../../core/log/scaleWorking";
import { deductionOf, diameterOf, diameterOrNone, lengthOf, longestOf } from "../logArguments";
import { chosenOr } from "../measuredIn";
import { oneText } from "../readings";
import { unitSystem } from "../unitSystem";
import { given, intoOurs, type Working } from "./working";

export const logScale: Working = {
  title: "LOGSCALE",
  takes: 9,
  steps([diameter, length, rule, deduction, round, longest, largeEnd, diameterRounding, units]) {
    const system = unitSystem(units);
    const { diameter: across, distance: along } = system;
    const by = logRule(oneText(rule, "Rule"));
    const rounding = chosenOr("Round", round, scaleRoundings, asTheRuleDoes);
    const toWhole = chosenOr("Diameter rounding", diameterRounding, diameterRoundings, notToWhole);
    const butt = given(diameterOrNone(largeEnd, "Large end", system));
    const log = {
      diameter: given(diameterOf(diameter, "Diameter", system)),
      length: given(lengthOf(length, system)),
      ...(butt !== 0 && { largeEnd: butt }),
    };
    const taken = given(deductionOf(deduction));
    const rounder = toWhole === notToWhole ? undefined : rounderFor(toWhole, 1);
    return [
      ...intoOurs("Diameter", log.diameter, across, "in"),
      ...intoOurs("Length", log.length, along, "ft"),
      ...scaleWorking(by, log, taken, rounding, longestOf(longest, system), rounder),
    ];
  },
};
