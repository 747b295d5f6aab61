import type { Choice } from "../../basis/choices";
import type { Source } from "../../basis/source";
import type { Feet } from "../../basis/units";
import type { ScaledLog } from "../logRule";

/** How far a defect reaches; what its kind does not ask for is left out. */
export interface DefectExtent {
  /** Length of the log that is affected. [ft] */
  readonly affectedLength?: Feet;
  /** What the kind measures it by: an angle, a departure, a height. [in, or degrees] */
  readonly size?: number;
  /** The other way across, for what is boxed in. [in] */
  readonly width?: number;
}

/** One measure that a kind asks for. */
export interface DefectMeasure {
  readonly of: keyof DefectExtent;
  /** Its name in a sentence. */
  readonly what: string;
  /** What it is told in. A diameter unit is inches, a length unit feet. */
  readonly unit: "diameter" | "length" | "degrees";
  readonly most: number;
}

/** A kind of defect, and the share of the gross scale that it takes, whichever the log rule. */
export interface DefectKind extends Choice {
  readonly id: string;
  readonly sources: readonly Source[];
  /** The measures it asks for; all others should be left out. */
  readonly asks: readonly DefectMeasure[];
  /** Share of the gross scale lost; may come out above 1 where the defect is larger than the log. */
  share(log: ScaledLog, extent: Required<DefectExtent>): number;
}

/** Measures that several kinds ask for, with bounds wide enough for any log. */
export const affectedLength: DefectMeasure = {
  of: "affectedLength",
  what: "Affected length",
  unit: "length",
  most: 120,
};
export const inchesOf = (of: "size" | "width", what: string): DefectMeasure => ({
  of,
  what,
  unit: "diameter",
  most: 120,
});
