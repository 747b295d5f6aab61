import type { SawLog } from "../sawLog";
import type { SawPlan } from "../sawingPattern";

/** One way to saw a source: the pieces it gives, and the plan of each of its logs that gives any. */
export interface SourcePlan {
  /** What the pieces are worth at the worths that were asked for. */
  readonly worth: number;
  /** How many of each piece. */
  readonly gives: readonly number[];
  readonly plans: readonly { readonly log: SawLog; readonly plan: SawPlan }[];
}

/** Something that pieces are sawn from, such as a log in the yard or a tree, and how many there are of its kind. */
export interface WoodSource {
  /** The names of those of a kind; as many as there are. */
  readonly names: readonly string[];
  /** Solid wood in one. [ft3] */
  readonly wood: number;
  /** The way to saw it whose pieces are together worth most. */
  best(worths: readonly number[]): SourcePlan;
}
