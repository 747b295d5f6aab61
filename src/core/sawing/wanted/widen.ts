import type { Search, SearchProgress } from "./search";

/** At most so many plans are made for it. */
const MOST_PLANS = 400;
/** What a piece that a log would give too often, or not at all, is worth at the next try of that log. */
const TOO_OFTEN = 0.85;
const NOT_AT_ALL = 1.1;

/**
 * Offers plans that no worths of the whole list would call for, but that a list of few pieces may need. Each log is
 * tried for each piece alone; then again and again for all pieces, one that it gives more often than the whole list
 * wants being worth less every time, one that it does not give being worth more.
 */
export function* widen(search: Search): Generator<SearchProgress, void> {
  const { volumes, order } = search;
  const tries = Math.min(
    4 * volumes.length + 8,
    Math.floor(MOST_PLANS / Math.max(1, order.sources.length)) - volumes.length,
  );
  for (const piece of volumes.keys()) {
    yield* search.tryAll(volumes.map((volume, i) => (i === piece ? volume : 0)));
  }
  const worths = order.sources.map(() => [...volumes]);
  for (let one = 0; one < tries; one += 1) {
    for (const [s, source] of order.sources.entries()) {
      const own = worths[s] as number[];
      const plan = source.best(own);
      search.master.offer(s, plan);
      yield search.progress(s + 1);
      plan.gives.forEach((count, i) => {
        const turn = count > (order.counts[i] as number) ? TOO_OFTEN : count === 0 ? NOT_AT_ALL : 1;
        own[i] = (own[i] as number) * turn;
      });
    }
  }
}
