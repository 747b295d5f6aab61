import { feet, inches } from "../../../core/basis/units";
import { boardMeasureWorking } from "../../../core/lumber/boardMeasure";
import { measuredIn } from "../measuredIn";
import { quarterScale } from "../quarterScale";
import { optionalNumber } from "../readings";
import { unitSystem } from "../unitSystem";
import { given, intoOurs, type Working } from "./working";

export const boardFeet: Working = {
  title: "BOARDFEET",
  takes: 5,
  steps([thick, wide, long, count, units]) {
    const system = unitSystem(units);
    const { diameter: across, distance: along } = system;
    const thickness = given(measuredIn(quarterScale(thick, system), "Thickness", across, inches, 0.01, 60));
    const width = given(measuredIn(wide, "Width", across, inches, 0.1, 120));
    const length = given(measuredIn(long, "Length", along, feet, 0.1, 120));
    const oneAtLeast = (pieces: number) => (pieces === 0 ? 1 : pieces);
    const pieces = given(optionalNumber(count, "Pieces", oneAtLeast, { unit: "boards", low: 0, high: 1e6 }, 1));
    return [
      ...intoOurs("Thickness", thickness, across, "in"),
      ...intoOurs("Width", width, across, "in"),
      ...intoOurs("Length", length, along, "ft"),
      ...boardMeasureWorking(thickness, width, length, pieces),
    ];
  },
};
