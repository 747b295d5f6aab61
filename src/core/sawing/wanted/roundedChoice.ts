import { allot, type Taken } from "./allot";
import { costOf, sumOf, volumesOf, type ChoiceOrder } from "./choice";
import type { CutDown } from "./cutDown";
import type { OfferedPlan } from "./master";
import type { WoodSource } from "./woodSource";

const HAIR = 1e-6;

/**
 * A choice in whole logs near one in broken amounts: what is whole in it stays; then one log after another is taken
 * whose known plan turns most of its wood into pieces that are still missing; at last, logs that are not needed go.
 */
export function roundedChoice(
  offered: readonly OfferedPlan[],
  amounts: readonly number[],
  order: ChoiceOrder,
  cuts: readonly CutDown[],
): readonly Taken[] {
  const { sources, counts } = order;
  const volumes = volumesOf(order);
  const left = sources.map(({ names }) => names.length);
  const taken: Taken[] = [];
  const missing = [...counts];
  const take = ({ source, plan }: OfferedPlan) => {
    left[source] = (left[source] as number) - 1;
    plan.gives.forEach((count, i) => (missing[i] = (missing[i] as number) - count));
    taken.push({ source, plan });
  };
  offered.forEach((one, p) => {
    for (let n = Math.floor((amounts[p] ?? 0) + HAIR); n > 0; n -= 1) take(one);
  });
  for (;;) {
    let most = 0;
    let next: OfferedPlan | undefined;
    for (const one of offered) {
      if ((left[one.source] as number) === 0) continue;
      const useful = one.plan.gives.reduce(
        (sum, count, i) => sum + Math.min(count, Math.max(0, missing[i] as number)) * (volumes[i] as number),
        0,
      );
      const share = useful / costOf(order, one.source);
      if (share > most + HAIR) [most, next] = [share, one];
    }
    if (!next) break;
    take(next);
  }
  return withoutIdle(taken, order, cuts);
}

/** Leaves out, the largest first, every log without which no more is missing. */
function withoutIdle(taken: readonly Taken[], order: ChoiceOrder, cuts: readonly CutDown[]): readonly Taken[] {
  const { sources, pieces, counts } = order;
  const volumes = volumesOf(order);
  const short = (some: readonly Taken[]) => sumOf(allot(some, counts, pieces, cuts).missing, volumes);
  const least = short(taken);
  const woodOf = ({ source }: Taken) => (sources[source] as WoodSource).wood;
  return [...taken]
    .sort((a, b) => woodOf(b) - woodOf(a))
    .reduce((kept, one) => {
      const without = kept.filter((other) => other !== one);
      return short(without) <= least + HAIR ? without : kept;
    }, taken);
}
