import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import type { BoardFeet, Feet, Inches, InchesPerFoot } from "../basis/units";

/** A log as its buyer scales it. */
export interface ScaledLog {
  /** Inside bark, at the small end. [in] */
  readonly diameter: Inches;
  /** Scaling length, trim left out. [ft] */
  readonly length: Feet;
}

/** A rule that tells how many board feet of lumber a straight, sound log is taken to hold. */
export interface LogRule extends Choice {
  /** The name of its file and of its printed table in test/published/log. */
  readonly id: string;
  readonly sources: readonly Source[];
  /** True when the formula or the table is known from memory only; said wherever the rule is shown. */
  readonly fromMemory?: boolean;
  /** The taper that the rule itself builds in; a rule that takes a log for a cylinder has none. [in/ft] */
  readonly taper?: InchesPerFoot;
  /**
   * Board feet, exact as the rule defines them.
   * @throws InvalidInput when a measure is not a number above 0 that a log can have (see requireLog)
   * @throws OutOfRange where the rule has no value
   */
  scale(log: ScaledLog): BoardFeet;
  /** Board feet as the rule's printed tables round them. */
  round(volume: BoardFeet): BoardFeet;
}
