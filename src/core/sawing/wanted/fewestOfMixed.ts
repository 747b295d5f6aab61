import { sumOf } from "./choice";
import { cutDowns } from "./cutDown";
import type { NewLinearProgram } from "./linearProgram";
import type { SourcePlan, WoodSource } from "./woodSource";
import { sawnBoardFeet, type BoardPiece } from "../boardSize";

/** Sources that are taken in fixed proportions, such as trees as they stand. */
export interface MixedOrder {
  readonly sources: readonly WoodSource[];
  /** Of every source its share of all; they add to 1. */
  readonly shares: readonly number[];
  readonly pieces: readonly BoardPiece[];
  readonly counts: readonly number[];
  readonly kerf: number;
}

export interface Mixed {
  /** How many it takes in all, broken numbers allowed. */
  readonly number: number;
  /** No fewer would do. */
  readonly atLeast: number;
  /** What share of the list one of each source gives, at the worths that decide. */
  readonly ofOne: readonly number[];
  /** Pieces that none of them gives; they are left out of the number. */
  readonly never: readonly number[];
}

const MOST_ROUNDS = 40;
const NEAR = 0.005;
const STEADY = 0.5;

/**
 * How many of some sources a list takes when they are taken in the proportions in which they stand. The same column
 * generation as for single logs, with one unknown in place of their numbers:
 *
 *     least T     sum(a_ip x_p) >= d_i     sum(x_p over the plans of s) <= f_s T
 *
 *     T    sources in all                        f_s  share of source s
 *     a_ip pieces i that plan p gives            d_i  pieces i wanted
 *
 * From any worths w of the pieces, with z_s what the best plan of s is worth, T >= sum(w d) / sum(f z).
 */
export function* fewestOfMixed(order: MixedOrder, newProgram: NewLinearProgram): Generator<number, Mixed> {
  const { sources, shares, pieces, counts, kerf } = order;
  const volumes = pieces.map(sawnBoardFeet);
  const never = yield* neverHad(order);
  const asked = counts.map((count, i) => (never.includes(i) ? 0 : count));
  const program = newProgram([
    ...asked.map((low) => ({ low, high: Infinity })),
    ...sources.map(() => ({ low: -Infinity, high: 0 })),
  ]);
  try {
    const penalty =
      1000 *
      Math.max(
        1,
        asked.reduce((sum, count) => sum + count, 0),
      );
    program.add([
      {
        cost: 1,
        entries: shares.map((share, s) => [counts.length + s, -share] as const),
      },
      ...asked.map((most, i) => ({
        cost: penalty,
        most,
        entries: [[i, 1]] as const,
      })),
      ...cutDowns(pieces, kerf).map(({ from, to, gives }) => ({
        cost: 0,
        entries: [
          [from, -1],
          [to, gives],
        ] as const,
      })),
    ]);
    const offer = (s: number, { gives }: SourcePlan) =>
      program.add([
        {
          cost: 0,
          entries: [
            ...gives.flatMap((count, i) => (count > 0 ? [[i, count] as const] : [])),
            [counts.length + s, 1] as const,
          ],
        },
      ]);

    let best = {
      atLeast: 0,
      worths: volumes as readonly number[],
      ofOne: shares.map(() => 0),
    };
    let number = Infinity;
    let worths: readonly number[] = volumes.map((volume, i) => (never.includes(i) ? 0 : volume));
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      const ofOne: number[] = [];
      for (const [s, source] of sources.entries()) {
        const plan = source.best(worths);
        ofOne.push(plan.worth);
        offer(s, plan);
        yield round;
      }
      const list = sumOf(asked, worths);
      const mean = sumOf(shares, ofOne);
      const atLeast = mean > 0 ? list / mean : 0;
      if (atLeast > best.atLeast) best = { atLeast, worths, ofOne: ofOne.map((worth) => worth / list) };
      const { amounts, rowPrices } = program.solve();
      number = amounts[0] as number;
      const isWhole = asked.every((_, i) => (amounts[1 + i] as number) < 1e-6);
      if (isWhole && number - best.atLeast <= NEAR * number) break;
      const scale = list / Math.max(1e-12, mean * best.atLeast);
      worths = volumes.map(
        (_, i) => STEADY * scale * (best.worths[i] as number) + (1 - STEADY) * (rowPrices[i] as number),
      );
    }
    return { number, atLeast: best.atLeast, ofOne: best.ofOne, never };
  } finally {
    program.close();
  }
}

/** Pieces that no source gives even when nothing else is wanted. */
function* neverHad({ sources, pieces }: MixedOrder): Generator<number, readonly number[]> {
  const never: number[] = [];
  for (const piece of pieces.keys()) {
    const alone = pieces.map((_, i) => (i === piece ? 1 : 0));
    let had = false;
    for (const source of sources) {
      had ||= source.best(alone).worth > 0;
      yield 0;
      if (had) break;
    }
    if (!had) never.push(piece);
  }
  return never;
}
