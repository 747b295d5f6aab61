import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import type { Step } from "../basis/step";
import type { BoardFeet, Feet, Inches, InchesPerFoot } from "../basis/units";

/** A log as its buyer scales it. */
export interface ScaledLog {
  /** Inside bark, at the small end unless its rule is measured at the middle. [in] */
  readonly diameter: Inches;
  /** Scaling length, trim left out. [ft] */
  readonly length: Feet;
}

/** A log whose large end may be known too. */
export interface FelledLog extends ScaledLog {
  /** Inside bark; left out when it was not measured. [in] */
  readonly largeEnd?: Inches;
}

/** A rule that tells how many board feet of lumber a straight, sound log is taken to hold. */
export interface LogRule extends Choice {
  /** The name of its file and of its printed table in test/published/log. */
  readonly id: string;
  readonly sources: readonly Source[];
  /**
   * True when the formula or the table is known from memory only. Its title then ends in "(from memory)", so that
   * every menu, heading and message says it; the bare name is one of its aliases.
   */
  readonly fromMemory?: boolean;
  /** False keeps a rule out of menus and of comparisons, unless all are asked for; a cell may name it all the same. */
  readonly inMenus?: boolean;
  /** Where the rule wants the diameter, if not at the small end. */
  readonly measuredAt?: "middle";
  /** Lengths, laid off from the small end, in which the rule itself has a longer log measured. [ft] */
  readonly sections?: Feet;
  /** The taper that the rule itself builds in; a rule that takes a log for a cylinder has none. [in/ft] */
  readonly taper?: InchesPerFoot;
  /**
   * Board feet, exact as the rule defines them.
   * @throws InvalidInput when a measure is not a number above 0 that a log can have (see requireLog)
   * @throws OutOfRange where the rule has no value
   */
  scale(log: ScaledLog): BoardFeet;
  /**
   * The way to that figure, step by step, from the same constants; the last step is what scale gives.
   * Asked only for a log that scale has a value for.
   */
  working?(log: ScaledLog): readonly Step[];
  /** Board feet as the rule's printed tables round them. */
  round(volume: BoardFeet): BoardFeet;
}
