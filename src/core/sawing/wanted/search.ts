import type { Taken } from "./allot";
import { choiceOf, costOf, isBetter, sumOf, volumesOf, type Bounds, type Choice, type ChoiceOrder } from "./choice";
import { cutDowns, type CutDown } from "./cutDown";
import type { NewLinearProgram } from "./linearProgram";
import { Master } from "./master";
import { roundedChoice } from "./roundedChoice";
import type { WoodSource } from "./woodSource";

/** How far a search has come, and the best choice so far. */
export interface SearchProgress {
  readonly round: number;
  /** Kinds of logs tried in this round, of all. */
  readonly done: number;
  readonly of: number;
  readonly best: Choice;
}

/** A missing piece counts this many times the wood of all logs, shared out over the list: never is one left out to save a log. */
const FIRST_OF_ALL = 1000;

/** What a search for the best choice knows. */
export class Search {
  readonly cuts: readonly CutDown[];
  readonly master: Master;
  readonly volumes: readonly number[];
  best: Choice;
  /** Logs of all kinds. */
  readonly logs: number;
  private round = 0;
  private lower = 0;
  private readonly wanted: number;
  private readonly penalty: number;
  private readonly allCosts: number;

  constructor(
    readonly order: ChoiceOrder,
    newProgram: NewLinearProgram,
  ) {
    const { sources, counts, pieces, kerf } = order;
    this.volumes = volumesOf(order);
    this.wanted = sumOf(counts, this.volumes);
    this.cuts = cutDowns(pieces, kerf);
    const costs = sources.map((_, s) => costOf(order, s));
    this.logs = sources.reduce((sum, { names }) => sum + names.length, 0);
    this.allCosts = sources.reduce((sum, { names }, s) => sum + names.length * (costs[s] as number), 0);
    this.penalty = (FIRST_OF_ALL * Math.max(this.allCosts, 1)) / this.wanted;
    const penalties = this.volumes.map((volume) => this.penalty * volume);
    this.master = new Master({ sources, counts, cuts: this.cuts, costs, penalties }, newProgram);
    this.best = choiceOf([], order, this.cuts, this.bounds);
  }

  /**
   * Tries the best plan of every kind of log at some worths of the pieces, and offers what is new.
   *
   * @returns how many plans were new, and what each kind's best plan is worth
   */
  *tryAll(
    worths: readonly number[],
  ): Generator<SearchProgress, { readonly added: number; readonly ofSources: number[] }> {
    this.round += 1;
    let added = 0;
    const ofSources: number[] = [];
    for (const [s, source] of this.order.sources.entries()) {
      const plan = source.best(worths);
      ofSources.push(plan.worth);
      if (this.master.offer(s, plan)) added += 1;
      yield this.progress(s + 1);
    }
    return { added, ofSources };
  }

  progress = (done: number): SearchProgress => ({
    round: this.round,
    done,
    of: this.order.sources.length,
    best: this.best,
  });

  /**
   * What any choice costs at least, from the worths of pieces and of the best plans at them:
   *
   *     L = f sum(w_i d_i) + sum(n_s min(0, c_s - f z_s))
   *
   *     w_i, d_i  worth and count of piece i   z_s  worth of the best plan of source s
   *     c_s, n_s  its cost and how many there are   f  a scale, any above 0
   *
   * @returns L, also kept when it is the highest so far
   */
  bound(worths: readonly number[], ofSources: readonly number[], scale = 1): number {
    const saved = this.order.sources.reduce(
      (sum, { names }, s) => sum + names.length * Math.min(0, costOf(this.order, s) - scale * (ofSources[s] as number)),
      0,
    );
    const bound = scale * sumOf(this.order.counts, worths) + saved;
    this.lower = Math.max(this.lower, bound);
    return bound;
  }

  /** Keeps the choice in whole logs that is nearest to one in broken amounts, if it is better than what is known. */
  consider(amounts: readonly number[]): void {
    this.keep(roundedChoice(this.master.offered, amounts, this.order, this.cuts));
  }

  keep(taken: readonly Taken[]): void {
    const found = choiceOf(taken, this.order, this.cuts, this.bounds);
    const known = choiceOf(this.best.taken, this.order, this.cuts, this.bounds);
    this.best = isBetter(found, known, this.order) ? found : known;
  }

  /** How far the bound is from the cost of a broken choice, as a share of it. */
  apart(cost: number): number {
    return (cost - this.lower) / Math.max(cost, Number.MIN_VALUE);
  }

  woodOf = (source: number): number => (this.order.sources[source] as WoodSource).wood;

  private get bounds(): Bounds {
    const short = Math.max(0, this.lower - this.allCosts) / this.penalty;
    const least = Math.min(this.lower, this.allCosts);
    return {
      atMost: this.wanted - short,
      atLeast: this.order.goal === "fewest logs" ? Math.ceil(least - HAIR) : least,
    };
  }
}

const HAIR = 1e-6;
