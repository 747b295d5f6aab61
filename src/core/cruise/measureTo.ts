import type { Choice } from "../basis/choices";
import type { Measure } from "../basis/units";

/** Feet of distance for each inch of DBH. */
export type FeetPerInch = Measure<"ft/in">;

/** Where on a tree the tape ends. */
export interface MeasureTo extends Choice {
  /** Part of the diameter that the tape leaves out, in feet for each inch of DBH. */
  readonly leftOut: FeetPerInch;
}

/** The pith, half a diameter behind the face. */
export const toCenter: MeasureTo = { title: "Center", aliases: ["Centre"], leftOut: 0 as FeetPerInch };

/** The near side of the stem at breast height: half a diameter, an inch being a twelfth of a foot, is left out. */
export const toFace: MeasureTo = { title: "Face", leftOut: (1 / 24) as FeetPerInch };

export const measureTos: readonly MeasureTo[] = [toCenter, toFace];
