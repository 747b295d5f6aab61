import { sumOf } from "./choice";
import { dive } from "./dive";
import type { Search, SearchProgress } from "./search";

/** Share of the logs taken that is given back in one turn, and the fewest of them. */
const GIVEN_BACK = 0.2;
const FEWEST = 4;

/**
 * Gives back the logs of a choice that do least for the list, and some others by turns, keeps the rest and chooses anew
 * for what is then missing.
 */
export function* mend(search: Search, turn: number): Generator<SearchProgress, void> {
  const { best, master, volumes } = search;
  const useful = best.taken.map(({ source }, at) => ({
    at,
    share: sumOf(best.gives[at] ?? [], volumes) / search.woodOf(source),
  }));
  useful.sort((a, b) => a.share - b.share || a.at - b.at);
  const many = Math.max(FEWEST, Math.ceil(GIVEN_BACK * useful.length));
  const start = (turn * many) % Math.max(1, useful.length);
  const back = new Set(
    useful.filter((_, rank) => rank < many / 2 || (rank >= start && rank < start + many / 2)).map(({ at }) => at),
  );
  const settled = new Map<number, number>();
  best.taken.forEach(({ plan }, at) => {
    if (back.has(at)) return;
    const number = master.offered.findIndex((one) => one.plan === plan);
    settled.set(number, (settled.get(number) ?? 0) + 1);
  });
  yield* dive(search, settled);
}
