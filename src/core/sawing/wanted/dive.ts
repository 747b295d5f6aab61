import type { Search, SearchProgress } from "./search";

/** At most so many plans are settled at once. */
const AT_ONCE = 5;
/** All logs are tried again whenever so large a share of them was settled. */
const TRY_AGAIN = 0.1;
const HAIR = 1e-6;

/**
 * Goes from a broken choice to one in whole logs: the plans followed most are settled as they stand, the rest is solved
 * again, and from time to time the logs are tried at what the pieces are worth then.
 *
 * @param settled plans that are followed from the start, by their number, and how often
 */
export function* dive(search: Search, settled: ReadonlyMap<number, number>): Generator<SearchProgress, void> {
  const { master, logs } = search;
  const times = new Map(settled);
  for (const [plan, many] of times) master.follow(plan, many);
  try {
    let since = settled.size > 0 ? Infinity : 0;
    for (;;) {
      const { amounts, rowPrices } = master.solve();
      const followed = master.amountsOf(amounts);
      if (since >= Math.max(1, logs * TRY_AGAIN)) {
        since = 0;
        yield* search.tryAll(search.volumes.map((_, i) => rowPrices[i] as number));
        continue;
      }
      search.consider(followed);
      const open = followed
        .map((amount, plan) => ({
          plan,
          more: amount - (times.get(plan) ?? 0),
        }))
        .filter(({ more }) => more > HAIR)
        .sort((a, b) => wholeness(b.more) - wholeness(a.more) || a.plan - b.plan);
      if (open.length === 0) return;
      const settle = open.filter(({ more }, i) => i === 0 || (i < AT_ONCE && more > 0.9));
      for (const { plan, more } of settle) {
        times.set(plan, (times.get(plan) ?? 0) + Math.max(1, Math.floor(more + HAIR)));
        master.follow(plan, times.get(plan) as number);
      }
      since += settle.length;
    }
  } finally {
    for (const plan of times.keys()) master.follow(plan, 0);
  }
}

/** Whole amounts first, then the nearest to the next whole one. */
const wholeness = (amount: number) => (amount >= 1 - HAIR ? 2 : amount);
