import { sawnBoardFeet, type BoardPiece } from "../boardSize";
import { allot, type Taken } from "./allot";
import type { CutDown } from "./cutDown";
import type { WoodSource } from "./woodSource";

/** What a cut list is to be sawn from, and what counts as better. */
export interface ChoiceOrder {
  readonly sources: readonly WoodSource[];
  readonly pieces: readonly BoardPiece[];
  /** How many of each piece are wanted. */
  readonly counts: readonly number[];
  /** Lost between two boards that one is ripped into. [in] */
  readonly kerf: number;
  readonly goal: "least wood" | "fewest logs";
}

/** A choice that was found, and how much better any other could be. */
export interface Choice {
  readonly taken: readonly Taken[];
  /** Of each that is taken, the pieces that count towards the list. */
  readonly gives: readonly (readonly number[])[];
  readonly missing: readonly number[];
  /** Solid wood of the logs taken. [ft3] */
  readonly wood: number;
  /** Of the list's pieces that are had, and of the whole list. [bf] */
  readonly boardFeet: number;
  readonly wanted: number;
  /** No choice of these logs gives more of the list. [bf] */
  readonly atMost: number;
  /** No choice that gives the whole list takes less: ft3 of wood, or logs. */
  readonly atLeast: number;
  /** How far this may be from the best: of the list where some of it is missing, else of what is taken. [%] */
  readonly gap: number;
}

export const volumesOf = ({ pieces }: ChoiceOrder): readonly number[] => pieces.map(sawnBoardFeet);

export const sumOf = (amounts: readonly number[], each: readonly number[]): number =>
  amounts.reduce((sum, amount, i) => sum + amount * (each[i] as number), 0);

export const costOf = ({ goal, sources }: ChoiceOrder, source: number): number =>
  goal === "fewest logs" ? 1 : (sources[source] as WoodSource).wood;

export type Bounds = Pick<Choice, "atMost" | "atLeast">;

export function choiceOf(
  taken: readonly Taken[],
  order: ChoiceOrder,
  cuts: readonly CutDown[],
  { atMost, atLeast }: Bounds,
): Choice {
  const { gives, missing } = allot(taken, order.counts, order.pieces, cuts);
  const volumes = volumesOf(order);
  const wanted = sumOf(order.counts, volumes);
  const boardFeet = wanted - sumOf(missing, volumes);
  const cost = taken.reduce((sum, { source }) => sum + costOf(order, source), 0);
  const isShort = missing.some((count) => count > 0);
  const [off, of] = isShort ? [atMost - boardFeet, atMost] : [cost - atLeast, cost];
  return {
    taken,
    gives,
    missing,
    wood: taken.reduce((sum, { source }) => sum + (order.sources[source] as WoodSource).wood, 0),
    boardFeet,
    wanted,
    atMost,
    atLeast,
    gap: of > 0 ? Math.max(0, (100 * off) / of) : 0,
  };
}

const HAIR = 1e-6;

/** More of the list, or as much of it from less. */
export function isBetter(one: Choice, other: Choice, order: ChoiceOrder): boolean {
  const cost = (choice: Choice) => choice.taken.reduce((sum, { source }) => sum + costOf(order, source), 0);
  const more = one.boardFeet - other.boardFeet;
  return more > HAIR || (more > -HAIR && cost(one) < cost(other) - HAIR);
}
