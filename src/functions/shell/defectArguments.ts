import { chosen } from "../../core/basis/choices";
import { feet, type Feet } from "../../core/basis/units";
import type { DefectUnits } from "../../core/log/defectPercent";
import { defectKinds } from "../../core/log/defects";
import type { DefectExtent, DefectKind } from "../../core/log/defects/defectKind";
import { LONGEST_LOG, WIDEST_LOG } from "./logArguments";
import { boundsIn } from "./measuredIn";
import { oneText, optionalNumber, type Reading } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** The kind of defect that a text names; undefined for a blank, which means a sound log. */
export function defectKind(given: unknown): DefectKind | undefined {
  const text = oneText(given, "Kind");
  return text === "" ? undefined : chosen("Kind", text, defectKinds);
}

/** How far a defect reaches, as the cell has it; a blank or 0 reads as 0, which stands for "not given". */
export interface ExtentReadings {
  readonly affectedLength: Reading<Feet>;
  readonly size: Reading<number>;
  readonly width: Reading<number>;
}

export function extentReadings(
  kind: DefectKind,
  given: { readonly affectedLength: unknown; readonly size: unknown; readonly width: unknown },
  { diameter, distance }: UnitSystem,
): ExtentReadings {
  const across = boundsIn(diameter, 0, WIDEST_LOG);
  const inches = (value: number) => value / diameter.perOurs;
  const size = kind.asks.find(({ of }) => of === "size");
  return {
    affectedLength: optionalNumber(
      given.affectedLength,
      "Affected length",
      (value) => feet(value / distance.perOurs),
      boundsIn(distance, 0, LONGEST_LOG),
    ),
    size:
      size?.unit === "degrees"
        ? optionalNumber(given.size, size.what, (degrees) => degrees, { unit: "degrees", low: 0, high: size.most })
        : optionalNumber(given.size, size?.what ?? "Size", inches, across),
    width: optionalNumber(given.width, "Width", inches, across),
  };
}

/** Leaves out what was not given. */
export const extentOf = (read: Required<DefectExtent>): DefectExtent =>
  Object.fromEntries(Object.entries(read).filter(([, value]) => value !== 0));

export const defectUnits = ({ diameter, distance }: UnitSystem): DefectUnits => ({
  diameter,
  length: distance,
  degrees: { name: "degrees", perOurs: 1 },
});
