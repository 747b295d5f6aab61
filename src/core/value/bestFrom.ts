import type { BuckOrder } from "./buckOrder";
import { logsFrom, SAME_CUT, type BuckedLog } from "./logsFrom";

/** The best from one cut upwards: its value, its lowest log, and the best above that one. */
export interface Best {
  readonly value: number;
  readonly log?: BuckedLog;
  readonly above?: Best;
}

const NOTHING: Best = { value: 0 };

/** The best from any cut upwards to one height; what is known of a cut is kept, so that each is looked at once. */
export function bestFrom(order: BuckOrder, top: number): (cut: number) => Best {
  const known = new Map<number, Best>();

  const best = (cut: number): Best => {
    const key = Math.round(cut / SAME_CUT);
    const before = known.get(key);
    if (before) return before;
    let most = NOTHING;
    for (const log of logsFrom(order, cut, top)) {
      const above = best(log.to);
      const value = log.value + above.value;
      if (value > most.value) most = { value, log, above };
    }
    known.set(key, most);
    return most;
  };
  return best;
}

/** The logs of a best, from the bottom up. */
export function logsOf(best: Best): readonly BuckedLog[] {
  const logs: BuckedLog[] = [];
  for (let at: Best | undefined = best; at?.log; at = at.above) logs.push(at.log);
  return logs;
}
