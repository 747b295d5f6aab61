import { costOf, type ChoiceOrder } from "./choice";
import type { Search, SearchProgress } from "./search";

/** How far the trial worths lie towards those of the best bound so far: steadies the worths from round to round. */
const STEADY = 0.5;
/** Rounds after which the plans known must do. */
const MOST_ROUNDS = 40;
/** The bound is near enough to the broken choice when it is within this share. */
const NEAR = 0.002;

/**
 * Column generation: the broken choice among the plans known so far says what each piece is worth in wood; at these
 * worths the best plan of every log is sought by the sawing programme itself; what is new is offered, and so on until
 * nothing better can come. The sum of those best plans bounds what any choice could reach.
 */
export function* converge(search: Search): Generator<SearchProgress, void> {
  const { order, master, volumes } = search;
  const first = yield* search.tryAll(volumes);
  const scale = bestScale(search, first.ofSources, order);
  let steady: readonly number[] = volumes.map((volume) => scale * volume);
  let highest = search.bound(volumes, first.ofSources, scale);
  search.consider([]);

  for (let round = 1; round <= MOST_ROUNDS; round += 1) {
    const { cost, amounts, rowPrices } = master.solve();
    const tried = volumes.map((_, i) => STEADY * (steady[i] as number) + (1 - STEADY) * (rowPrices[i] as number));
    const { added, ofSources } = yield* search.tryAll(tried);
    const bound = search.bound(tried, ofSources);
    if (bound > highest) [highest, steady] = [bound, tried];
    search.consider(master.amountsOf(amounts));
    if (added === 0 || search.apart(cost) <= NEAR) return;
  }
}

/** What a board foot should be worth in wood so that the bound by volume alone is highest: some log then just pays. */
function bestScale(search: Search, ofSources: readonly number[], order: ChoiceOrder): number {
  const scales = ofSources.flatMap((worth, s) => (worth > 0 ? [costOf(order, s) / worth] : []));
  const bound = (scale: number) => search.bound(search.volumes, ofSources, scale);
  return scales.reduce((best, scale) => (bound(scale) > bound(best) ? scale : best), 0);
}
