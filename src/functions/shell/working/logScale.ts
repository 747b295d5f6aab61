import { feet, inches, percent } from "../../../core/basis/units";
import { logRule } from "../../../core/log/findLogRule";
import { asTheRuleDoes, scaleRoundings } from "../../../core/log/scaleRounding";
import { scaleWorking } from "../../../core/log/scaleWorking";
import { boundsIn, chosenOr, measuredIn } from "../measuredIn";
import { oneNumber, oneText, optionalNumber } from "../readings";
import { unitSystem } from "../unitSystem";
import { given, intoOurs, type Working } from "./working";

export const logScale: Working = {
  title: "LOGSCALE",
  takes: 7,
  steps([diameter, length, rule, deduction, round, longest, units]) {
    const { diameter: across, distance: along } = unitSystem(units);
    const by = logRule(oneText(rule, "Rule"));
    const rounding = chosenOr("Round", round, scaleRoundings, asTheRuleDoes);
    const limit = oneNumber(longest, "Longest scaling length", boundsIn(along, 4, 120), Infinity);
    const log = {
      diameter: given(measuredIn(diameter, "Diameter", across, inches, 1, 120)),
      length: given(measuredIn(length, "Length", along, feet, 1, 120)),
    };
    const taken = given(optionalNumber(deduction, "Deduction", percent, { unit: "%", low: 0, high: 100 }));
    return [
      ...intoOurs("Diameter", log.diameter, across, "in"),
      ...intoOurs("Length", log.length, along, "ft"),
      ...scaleWorking(by, log, taken, rounding, feet(limit / along.perOurs)),
    ];
  },
};
