import type { Source } from "../../basis/source";
import type { Choice, ChoiceOrder } from "./choice";
import { converge } from "./converge";
import { dive } from "./dive";
import type { NewLinearProgram } from "./linearProgram";
import { mend } from "./mend";
import { widen } from "./widen";
import { Search, type SearchProgress } from "./search";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Logs chosen for a cut list by column generation, the sawing programme as pricing, with the gap stated",
    where: "core/sawing/wanted; held against a whole integer model in test/core/sawing/wanted",
    standing: "computed",
  },
  {
    author: "P. C. Gilmore and R. E. Gomory",
    year: "1961",
    title: "A linear programming approach to the cutting-stock problem, Operations Research 9",
    where: "column generation: a linear programme whose columns are priced by a programme of their own",
    standing: "from memory",
  },
  {
    author: "T. C. Maness and D. M. Adams",
    year: "1991",
    title: "The combined optimization of log bucking and sawing strategies, Wood and Fiber Science 23",
    where: "linear programming with columns made as they are needed",
    standing: "from memory",
  },
];

export interface Thoroughness {
  /** The gap at which the search ends. [%] */
  readonly goodEnough: number;
  /** How often the best choice is mended at most. */
  readonly turns: number;
}

/** A list so short that plans are sought which only short lists need. */
const FEW_PLANS = 150;
/** So few plans that the best whole choice among them all is found in little time, within so many branches. */
const JOINED = 500;
const BRANCHES = 100;

const usual: Thoroughness = { goodEnough: 1, turns: 12 };

/**
 * Which logs to saw for a list of wanted pieces, and how each: as much of the list as can be had, and that from the
 * least wood or the fewest logs.
 *
 * By column generation: the sawing programme itself finds the plans, a linear programme chooses among them, and its
 * bound tells how far the choice may be from the best of all choices of these logs, each sawn by one pattern. The same
 * order gives the same choice.
 */
export function* chooseLogs(
  order: ChoiceOrder,
  newProgram: NewLinearProgram,
  { goodEnough, turns }: Thoroughness = usual,
): Generator<SearchProgress, Choice> {
  const search = new Search(order, newProgram);
  try {
    yield* converge(search);
    yield* dive(search, new Map());
    if (search.best.gap > goodEnough && search.master.offered.length <= FEW_PLANS) yield* widen(search);
    joinWhole(search, goodEnough);
    for (let turn = 1; turn <= turns && search.best.gap > goodEnough; turn += 1) yield* mend(search, turn);
    joinWhole(search, goodEnough);
    return search.best;
  } finally {
    search.master.close();
  }
}

/** The best whole choice among the plans that are known, where they are few. */
function joinWhole(search: Search, goodEnough: number): void {
  if (search.best.gap <= goodEnough || search.master.offered.length > JOINED) return;
  const followed = search.master.solveWhole(BRANCHES);
  if (followed) search.consider(followed);
}
