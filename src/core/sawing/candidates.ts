import { inches, type Inches } from "../basis/units";
import { HAIR, type Slot } from "./fill";
import type { Flitch } from "./flitches";
import { diameterAt, type SawLog } from "./sawLog";

/**
 * How far wood reaches to the left and to the right of the pith, along the saw planes, where planes square to them were
 * sawn before; to the bark where none were. The pith lies between the two. [in]
 */
export interface Sides {
  readonly left: number;
  readonly right: number;
}

export const toTheBark: Sides = { left: -Infinity, right: Infinity };

/**
 * Where a flitch may lie in the log: both its faces keep within its reach of the pith, or wane shows.
 *
 *     s = max(w / 2, w - n)
 *     reach = sqrt(D(l)^2 / 4 - s^2) + q t,  at most D(l) / 2
 *
 *     w, t, l  width over all, thickness, length                        [in], [in], [ft]
 *     D(l)     diameter of the log at l from its large end              [in]
 *     n        distance of the nearer side from the pith                [in]
 *     s        half of the chord that the outer face needs              [in]
 *     q        share of the thickness over which wane may show          (0 to 1)
 *
 * With the side n cut away, a flitch wider than 2 n lies off the middle, and its other edge meets the bark at w - n.
 * Undefined when it lies nowhere.
 */
export function reachOf(
  log: SawLog,
  { width, thickness, length }: Flitch,
  wane: number,
  sides: Sides,
): Inches | undefined {
  if (width > sides.right - sides.left + HAIR) return undefined;
  const radius = diameterAt(log, length) / 2;
  const half = Math.max(width / 2, width - Math.min(0 - sides.left, sides.right));
  if (half > radius) return undefined;
  const reach = Math.min(radius, Math.sqrt(radius ** 2 - half ** 2) + wane * thickness);
  return 2 * reach + HAIR < thickness ? undefined : inches(reach);
}

/**
 * The flitches as slots of a stack whose line crosses the pith at 0. One is left out when another of its thickness is
 * worth as much and may lie as far out: it can never be missed. In a group, from the narrowest reach (worth most) to
 * the widest.
 */
export function candidates(
  log: SawLog,
  groups: readonly (readonly Flitch[])[],
  wane: number,
  sides: Sides = toTheBark,
): readonly (readonly Slot<Flitch>[])[] {
  return groups
    .map((group) =>
      undominated(
        group.flatMap((item) => {
          const reach = reachOf(log, item, wane, sides);
          if (reach === undefined) return [];
          const { thickness, worth, boards } = item;
          return [{ extent: thickness, low: 0 - reach, high: reach, worth, pieces: boards.length, item }];
        }),
      ),
    )
    .filter((group) => group.length > 0);
}

function undominated(group: readonly Slot<Flitch>[]): readonly Slot<Flitch>[] {
  const fromWidest = [...group].sort(
    (a, b) =>
      b.high - a.high ||
      b.worth - a.worth ||
      a.pieces - b.pieces ||
      b.item.length - a.item.length ||
      a.item.width - b.item.width,
  );
  const kept: Slot<Flitch>[] = [];
  for (const slot of fromWidest) {
    const most = kept.at(-1)?.worth ?? 0;
    if (slot.worth > most) kept.push(slot);
  }
  return kept.reverse();
}
