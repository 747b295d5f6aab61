import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import type { Inches } from "../basis/units";
import type { Placed } from "./bestStack";
import type { BoardSize } from "./boardSize";
import type { BoardLengths } from "./candidates";
import type { CutList } from "./cutList";
import type { SawLog } from "./sawLog";

/** A log to be sawn, and what it should be sawn into. Checked before a pattern sees it. */
export interface SawJob {
  readonly log: SawLog;
  readonly sizes: readonly BoardSize[];
  /** True when every size has a price: then dollars are to be had, not board feet. */
  readonly priced: boolean;
  readonly kerf: Inches;
  readonly lengths: BoardLengths;
  /** The lowest the blade can be set above the bed. [in] */
  readonly bladeAboveBed: Inches;
}

export interface SawPlan extends CutList {
  readonly log: SawLog;
  readonly kerf: Inches;
  readonly priced: boolean;
  /** From the lowest to the highest before any turn; never empty. */
  readonly boards: readonly Placed[];
  /** What the plan is the best of, in a sentence that can be shown. */
  readonly guarantee: string;
}

/** A way to open a log. A further one is a file in patterns/ and its name in patterns/index.ts. */
export interface SawingPattern extends Choice {
  readonly id: string;
  readonly sources: readonly Source[];
  /** @throws OutOfRange when no listed board fits, or the mill cannot follow the plan */
  plan(job: SawJob): SawPlan;
}
