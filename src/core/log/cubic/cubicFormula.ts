import type { Choice } from "../../basis/choices";
import type { Source } from "../../basis/source";
import type { Step } from "../../basis/step";
import type { CubicFeet, Feet, Inches } from "../../basis/units";

/** A log with its diameters at both ends and, where a formula asks for it, half way between them. */
export interface MeasuredLog {
  readonly smallEnd: Inches;
  readonly largeEnd: Inches;
  readonly middle?: Inches;
  readonly length: Feet;
}

/** A formula that tells how many cubic feet a log holds from areas across it. */
export interface CubicFormula extends Choice {
  readonly id: string;
  readonly sources: readonly Source[];
  /** @throws InvalidInput when a diameter that the formula uses is missing, or it or the length is not above 0 */
  volume(log: MeasuredLog): CubicFeet;
  /**
   * The way to that figure, step by step; the last step is what volume gives.
   * Asked only for a log that volume has a value for.
   */
  working(log: MeasuredLog): readonly Step[];
}
