import type { CutDown } from "./cutDown";
import type { Column, LinearAnswer, LinearProgram, NewLinearProgram } from "./linearProgram";
import type { SourcePlan, WoodSource } from "./woodSource";

/** A plan that may be chosen for one source. */
export interface OfferedPlan {
  readonly source: number;
  readonly plan: SourcePlan;
}

export interface MasterOrder {
  readonly sources: readonly WoodSource[];
  readonly counts: readonly number[];
  readonly cuts: readonly CutDown[];
  /** What one of each source costs, and what one of each piece costs that is not had. */
  readonly costs: readonly number[];
  readonly penalties: readonly number[];
}

/**
 * The choice among the plans that are known so far, as a linear programme:
 *
 *     least   sum(c_s x_p) + sum(M_i m_i)
 *     sum(a_ip x_p) + sum(q y_ji) - sum(y_ij) + m_i >= d_i     for every piece i
 *     sum(x_p over the plans of s) <= n_s                      for every source s
 *
 *     x_p   how often plan p is followed                 a_ip  pieces i that it gives
 *     y_ij  pieces i cut down to q pieces j              m_i   pieces i that are missing
 *     d_i   pieces i wanted                              n_s   sources of a kind, c_s what one costs, M_i the penalty
 */
export class Master {
  readonly offered: OfferedPlan[] = [];
  private readonly program: LinearProgram;
  private readonly known = new Set<string>();
  private readonly columnsBefore: number;

  constructor(
    private readonly order: MasterOrder,
    newProgram: NewLinearProgram,
  ) {
    const { sources, counts, cuts, penalties } = order;
    this.program = newProgram([
      ...counts.map((low) => ({ low, high: Infinity })),
      ...sources.map(({ names }) => ({ low: -Infinity, high: names.length })),
    ]);
    const missing = counts.map((most, i): Column => ({
      cost: penalties[i] as number,
      most,
      entries: [[i, 1]],
    }));
    const cutting = cuts.map(({ from, to, gives }): Column => ({
      cost: 0,
      entries: [
        [from, -1],
        [to, gives],
      ],
    }));
    this.program.add([...missing, ...cutting]);
    this.columnsBefore = missing.length + cutting.length;
  }

  /** @returns false when it is known already, or gives nothing */
  offer(source: number, plan: SourcePlan): boolean {
    const key = `${source} ${plan.gives.join()}`;
    if (this.known.has(key) || plan.gives.every((count) => count === 0)) return false;
    this.known.add(key);
    this.offered.push({ source, plan });
    const pieces = plan.gives.flatMap((count, i) => (count > 0 ? [[i, count] as const] : []));
    this.program.add([
      {
        cost: this.order.costs[source] as number,
        entries: [...pieces, [this.order.counts.length + source, 1]],
      },
    ]);
    return true;
  }

  solve(): LinearAnswer {
    return this.program.solve();
  }

  /** How often each offered plan is followed in whole logs; undefined when none was found within the branches. */
  solveWhole(branches: number): readonly number[] | undefined {
    const amounts = this.program.solveWhole(branches);
    return amounts && this.amountsOf(amounts).map(Math.round);
  }

  /** Asks for an offered plan so many times from now on. */
  follow(plan: number, times: number): void {
    this.program.atLeast(this.columnsBefore + plan, times);
  }

  /** How often each offered plan is followed in an answer. */
  amountsOf = (amounts: ArrayLike<number>): readonly number[] =>
    this.offered.map((_, i) => amounts[this.columnsBefore + i] as number);

  close(): void {
    this.program.close();
  }
}
