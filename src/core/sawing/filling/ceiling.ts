import { HAIR } from "./hair";
import type { Group } from "./group";
import type { Slot } from "./way";

/** What a line can be filled with at most. */
export interface Ceiling {
  readonly most: number;
  /** By slots that begin at a height or above it. */
  readonly above: (height: number) => number;
}

const OFF_THE_EDGE = 1e-6; // in; so places that differ by rounding only are counted in one cell
const FEWEST_CELLS = 12; // in the thinnest slot and its gap: choices of ours, for a ceiling within about 1 %
const MOST_CELLS = 24;
const CELLS_OF_LINE = 1024;

/**
 * A bound on the best filling, many times quicker to come by. Places are counted in cells of a step g; a slot may begin
 * anywhere in its cell, and so the next one in any place of the cell that it can reach:
 *
 *     f(i) = max(f(i + 1), v + f(i + floor((t + k) / g)))
 *
 *     f(i)  most worth of what begins in cell i or above it    t, k  extent of a slot, gap between two  [in]
 *     v     most worth of a slot that may begin in cell i      g     see stepOfCells                    [in]
 *
 * Never below the truth, since every filling is one of those that f looks at.
 *
 * @param groups slots of one extent each, those worth most first
 */
export function ceilingOf<Item>(groups: readonly Group<Item>[], gap: number, step: number): Ceiling {
  let lowest = Infinity;
  let highest = -Infinity;
  for (const { slots } of groups) {
    for (const { low, high, extent } of slots) {
      if (low < lowest) lowest = low;
      if (high - extent > highest) highest = high - extent;
    }
  }
  if (lowest === Infinity) return { most: 0, above: () => 0 };
  const first = lowest - OFF_THE_EDGE;
  const cells = Math.floor((highest + 2 * OFF_THE_EDGE - first) / step) + 1;
  const kinds = groups.length;
  if (table.length < cells * kinds) table = new Float64Array(2 * cells * kinds);
  const worths = table.fill(0, 0, cells * kinds);
  groups.forEach(({ slots }, g) => fillIn(worths, g, kinds, slots, first, cells, step));
  const reaches = Int32Array.from(groups, ({ slots }) => Math.floor(((slots[0]?.extent ?? 0) + gap) / step + HAIR));

  const most = new Float64Array(cells + 1);
  for (let i = cells - 1; i >= 0; i -= 1) {
    let best = most[i + 1] as number;
    for (let g = 0; g < kinds; g += 1) {
      const next = i + (reaches[g] as number);
      const all = (worths[i * kinds + g] as number) + (next < cells ? (most[next] as number) : 0);
      if (all > best) best = all;
    }
    most[i] = best;
  }
  return {
    most: most[0] as number,
    above: (height) => {
      const cell = Math.floor((height - HAIR - first) / step);
      return cell < 0 ? (most[0] as number) : cell >= cells ? 0 : (most[cell] as number);
    },
  };
}

let table = new Float64Array(8192); // serves one ceiling after another

/** Puts down the most that a slot of a group is worth that may begin in a cell. */
function fillIn<Item>(
  worths: Float64Array,
  g: number,
  kinds: number,
  group: readonly Slot<Item>[],
  first: number,
  cells: number,
  step: number,
): void {
  let from = cells;
  let to = -1; // what is filled in so far, as long as it is one stretch
  let isWhole = true;
  for (const { low, high, extent, worth } of group) {
    const lower = Math.floor((low - first) / step);
    const upper = Math.min(cells - 1, Math.floor((high - extent + OFF_THE_EDGE - first) / step));
    if (to >= 0 && (lower > to + 1 || upper < from - 1)) isWhole = false;
    if (isWhole) {
      for (let i = lower; i <= upper && i < from; i += 1) worths[i * kinds + g] = worth;
      for (let i = Math.max(lower, to + 1); i <= upper; i += 1) worths[i * kinds + g] = worth;
    } else {
      for (let i = lower; i <= upper; i += 1) if (worths[i * kinds + g] === 0) worths[i * kinds + g] = worth;
    }
    from = Math.min(from, lower);
    to = Math.max(to, upper);
  }
}

/**
 * The step of cells that fits the slots best: each extent and its gap as nearly a whole number of steps as can be, since
 * what a slot is counted short by is what the ceiling is too high by.
 */
export function stepOfCells(extents: readonly number[], gap: number, length: number): number {
  const thinnest = Math.min(...extents) + gap;
  const least = Math.max(thinnest / MOST_CELLS, length / CELLS_OF_LINE);
  let best = least;
  let leastLost = Infinity;
  for (const extent of extents) {
    const [from, to] = [(extent + gap) / Math.max(least, thinnest / FEWEST_CELLS), (extent + gap) / least];
    for (let parts = Math.ceil(from - HAIR); parts <= to + HAIR; parts += 1) {
      const step = (extent + gap) / parts;
      const lost = Math.max(...extents.map((one) => lostShare((one + gap) / step)));
      if (lost < leastLost - HAIR) {
        leastLost = lost;
        best = step;
      }
    }
  }
  return best;
}

const lostShare = (steps: number) => 1 - Math.floor(steps + HAIR) / steps;
