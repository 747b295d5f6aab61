import type { Inches } from "../../basis/units";
import { undominated, withRoom } from "../candidates";
import { ceilingOf, stepOfCells } from "../filling/ceiling";
import { HAIR } from "../filling/hair";
import type { Slot, Way } from "../filling/way";
import type { Flitch } from "../flitches";
import { thickestOf } from "../sawLog";
import type { Sawing } from "../sawnFlitch";
import { toTheBark, type Sides } from "../sides";
import { bestOnBed, partsOnBed, type PartOnBed } from "../stackOnBed";
import type { CantOrder } from "./cantOrder";

/** What a cant with its faces at two places can be sawn into. */
export interface InsideCant {
  /** No stack in it is worth more. */
  readonly most: number;
  /** The best stack, unless it is worth less than is asked for. */
  readonly best: (least: number) => Way<Flitch> | undefined;
}

export interface CantInsides {
  /** Widths of all flitches that the best stack in some cant may need. */
  readonly widths: readonly Inches[];
  /** Whether some flitch of a width has room between two faces. */
  readonly holds: (width: Inches, sides: Sides) => boolean;
  readonly between: (sides: Sides) => InsideCant;
}

/** Stacks in cants of one log: what cants have in common is found once. */
export function cantInsides({ inside, roomFor, bladeAboveBed, throat }: CantOrder, sawing: Sawing): CantInsides {
  const { log, lying, kerf, scaleStep } = sawing;
  const parts = partsOnBed(inside, { bladeAboveBed, throat }, scaleStep);
  const inLog = new Map(
    parts.map((part) => {
      const slots = withRoom(roomFor, part.flitches, "right", toTheBark);
      return [part, lying.isSymmetrical ? neverBeaten(slots) : slots];
    }),
  );
  const slots = [...inLog.values()].flat();
  const extents = [...new Set(slots.map(({ extent }) => extent))];
  const step = extents.length === 0 ? 1 : stepOfCells(extents, kerf, thickestOf(log));

  const slotsBetween = (part: PartOnBed, sides: Sides): readonly Slot<Flitch>[] => {
    const ofLog = inLog.get(part) ?? [];
    const thickness = sides.right - sides.left;
    if (!lying.isSymmetrical) {
      const flitches = ofLog.flatMap(({ item }) => (item.width <= thickness + HAIR ? [item] : []));
      return withRoom(roomFor, flitches, "right", sides);
    }
    // A flitch no wider than twice the nearer face's distance lies in the middle, as in the uncut log; see reachOf.
    const inMiddle = 2 * Math.min(0 - sides.left, sides.right) + HAIR;
    const between: Slot<Flitch>[] = [];
    for (const slot of ofLog) {
      const { width } = slot.item;
      if (width <= inMiddle) between.push(slot);
      else if (width <= thickness + HAIR) {
        const room = roomFor(slot.item, "right", sides);
        if (room) between.push({ ...slot, ...room });
      }
    }
    return between;
  };

  return {
    widths: [...new Set(slots.map(({ item }) => item.width))],
    holds: (width, sides) =>
      slots.some(({ item }) => item.width === width && roomFor(item, "right", sides) !== undefined),
    between: (sides) => {
      const groups = parts
        .map((part) => ({ slots: slotsBetween(part, sides), kind: part.kind }))
        .filter((group) => group.slots.length > 0);
      const ceiling = ceilingOf(groups, kerf, step);
      return {
        most: ceiling.most,
        best: (least) => {
          if (ceiling.most < least) return undefined;
          const needed = groups.map((group) => ({ ...group, slots: undominated(group.slots) }));
          const way = bestOnBed(needed, "right", sawing, { worth: least, ceiling, step });
          return way && way.worth >= least ? way : undefined;
        },
      };
    },
  };
}

/**
 * Slots of a symmetrical log without those that are never missed in any cant: another is worth as much, is no wider and may
 * lie wherever it may. In a cant off the middle that holds as well: there a flitch that is wider than twice the distance n
 * of the nearer face reaches up to sqrt(R^2 - (w - n)^2), and (w - n)^2 - w^2 / 4 grows with w.
 */
function neverBeaten(slots: readonly Slot<Flitch>[]): readonly Slot<Flitch>[] {
  const kept: Slot<Flitch>[] = [];
  for (const slot of slots) {
    const { low, high, item } = slot;
    if (!kept.some((one) => one.low <= low && one.high >= high && one.item.width <= item.width)) kept.push(slot);
  }
  return kept;
}
