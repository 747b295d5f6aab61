import { feet, inches } from "../../../core/basis/units";
import { cubicFormulas } from "../../../core/log/cubic";
import { smalian } from "../../../core/log/cubic/smalian";
import { boundsIn, chosenOr, measuredIn } from "../measuredIn";
import { optionalNumber } from "../readings";
import { unitSystem } from "../unitSystem";
import { given, intoOurs, outOfOurs, type Working } from "./working";

export const logCubic: Working = {
  title: "LOGCUBIC",
  takes: 6,
  steps([small, large, long, formula, half, units]) {
    const { diameter: across, distance: along, cubic } = unitSystem(units);
    const by = chosenOr("Formula", formula, cubicFormulas, smalian);
    const smallEnd = given(measuredIn(small, "Small end", across, inches, 1, 120));
    const largeEnd = given(measuredIn(large, "Large end", across, inches, 1, 120));
    const length = given(measuredIn(long, "Length", along, feet, 1, 120));
    const tag = (value: number) => inches(value / across.perOurs);
    const middle = given(optionalNumber(half, "Middle", tag, boundsIn(across, 0, 120)));

    const log = middle === 0 ? { smallEnd, largeEnd, length } : { smallEnd, largeEnd, length, middle };
    by.volume(log); // throws where there is no volume, and so no way to it
    return [
      ...intoOurs("Small end", smallEnd, across, "in"),
      ...intoOurs("Large end", largeEnd, across, "in"),
      ...(middle === 0 ? [] : intoOurs("Middle", middle, across, "in")),
      ...intoOurs("Length", length, along, "ft"),
      ...outOfOurs(by.working(log), "In cubic metres", cubic),
    ];
  },
};
