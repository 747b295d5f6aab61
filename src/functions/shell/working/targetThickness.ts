import { inches, percent } from "../../../core/basis/units";
import { targetThicknessWorking } from "../../../core/lumber/targetThickness";
import { boundsIn, measuredIn } from "../measuredIn";
import { optionalNumber } from "../readings";
import { unitSystem } from "../unitSystem";
import { given, intoOurs, outOfOurs, type Working } from "./working";

export const targetThickness: Working = {
  title: "TARGETTHICKNESS",
  takes: 5,
  steps([done, shrink, planed, uneven, units]) {
    const { diameter: across } = unitSystem(units);
    const allowance = (cell: unknown, what: string) =>
      given(optionalNumber(cell, what, (value) => inches(value / across.perOurs), boundsIn(across, 0, 2)));
    const finished = given(measuredIn(done, "Finished thickness", across, inches, 0.01, 60));
    const shrinkage = given(optionalNumber(shrink, "Shrinkage", percent, { unit: "%", low: 0, high: 50 }));
    const planing = allowance(planed, "Planing");
    const variation = allowance(uneven, "Saw variation");
    return [
      ...intoOurs("Finished thickness", finished, across, "in"),
      ...intoOurs("Planing", planing, across, "in"),
      ...intoOurs("Saw variation", variation, across, "in"),
      ...outOfOurs(targetThicknessWorking({ finished, shrinkage, planing, variation }), "In centimetres", across),
    ];
  },
};
