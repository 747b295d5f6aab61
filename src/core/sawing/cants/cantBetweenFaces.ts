import { inches, type Inches } from "../../basis/units";
import { HAIR } from "../filling/hair";
import { asGood, bestBelow, type Way } from "../filling/way";
import type { Flitch } from "../flitches";
import type { Sawing } from "../sawnFlitch";
import { markFrom } from "../scale";
import { toTheBark } from "../sides";
import type { Cant, CantOrder } from "./cantOrder";
import { facesOf } from "./faces";
import { cantInsides, type CantInsides, type InsideCant } from "./insideCant";

/**
 * The best cant of a log whose two sides differ, being swept or sawn parallel to the bark: over all places of its upper
 * and its lower face, the pith between them.
 *
 * Exact, without a grid; on a scale, of all faces on its marks: a face moved outwards leaves the cant no narrower, and
 * what lies in it can stay where it is. So it may be moved until the side boards beyond it would be worth less, and only
 * such places need be tried, see faces.ts. Runs of both faces are halved again and again, always those of the highest
 * ceiling first: what the cant between the two outermost could be worth, with the side boards of the two innermost.
 */
export function cantBetweenFaces(order: CantOrder, sawing: Sawing): Cant | undefined {
  const insides = cantInsides(order, sawing);
  const over = facesOf("top", order, sawing);
  const under = facesOf("bottom", order, sawing);
  const { toBeat = 0, bladeAboveBed, widestCut } = order;
  let best: Cant | undefined;
  const least = () => {
    const needed = Math.max(best?.worth ?? 0, toBeat);
    return needed - HAIR * Math.max(1, needed);
  };
  const open: Runs[] = [];
  const add = (upper: Run, lower: Run, ceiling: number): void => {
    const outermost = (over[upper.to] as number) + (under[lower.to] as number);
    const innermost = (over[upper.from] as number) + (under[lower.from] as number);
    if (outermost < bladeAboveBed - HAIR || innermost > widestCut + HAIR) return;
    const outside = sidesAt(over[upper.from] as number, under[lower.from] as number, order);
    if (ceiling + outside.worth < least()) return;
    const inside = insides.between({ left: 0 - (over[upper.to] as number), right: under[lower.to] as number });
    const most = Math.min(ceiling, inside.most);
    if (most + outside.worth >= least()) open.push({ upper, lower, inside, most, bound: most + outside.worth });
  };

  if (over.length > 0 && under.length > 0) {
    add({ from: 0, to: over.length - 1 }, { from: 0, to: under.length - 1 }, Infinity);
  }
  for (let runs = takeHighest(open); runs && runs.bound >= least(); runs = takeHighest(open)) {
    const { upper, lower, inside, most } = runs;
    if (upper.from === upper.to && lower.from === lower.to) {
      const found = cantAt(over[upper.from] as number, under[lower.from] as number, inside, least(), order);
      if (found && !(best && asGood(best, found))) best = found;
    } else if (lengthOf(over, upper) >= lengthOf(under, lower)) {
      for (const half of halvesOf(upper)) add(half, lower, most);
    } else {
      for (const half of halvesOf(lower)) add(upper, half, most);
    }
  }
  return best && thinnest(best, insides, order, sawing);
}

/** Places of a face, by number from the innermost to the outermost. */
interface Run {
  readonly from: number;
  readonly to: number;
}

interface Runs {
  readonly upper: Run;
  readonly lower: Run;
  /** The cant between the outermost places, what it or any between others is worth at most, and that with side boards. */
  readonly inside: InsideCant;
  readonly most: number;
  readonly bound: number;
}

function takeHighest(open: Runs[]): Runs | undefined {
  const highest = open.reduce((top, { bound }, i) => (bound > (open[top] as Runs).bound ? i : top), 0);
  const last = open.pop();
  if (highest >= open.length || !last) return last;
  const taken = open[highest];
  open[highest] = last;
  return taken;
}

const lengthOf = (places: readonly number[], { from, to }: Run) => (places[to] as number) - (places[from] as number);

function halvesOf({ from, to }: Run): readonly Run[] {
  const middle = (from + to) >> 1;
  return [
    { from, to: middle },
    { from: middle + 1, to },
  ];
}

/** The best side boards beyond two faces. */
function sidesAt(upper: number, lower: number, { sideBoards }: CantOrder) {
  const over = bestBelow(sideBoards("top", toTheBark), 0 - upper);
  const under = bestBelow(sideBoards("bottom", toTheBark), 0 - lower);
  const sum = (of: (way: Way<Flitch>) => number) => (over ? of(over) : 0) + (under ? of(under) : 0);
  return { over, under, worth: sum(({ worth }) => worth), pieces: sum(({ pieces }) => pieces) };
}

/** @param upper, lower how far above and below the pith its faces lie [in] */
function cantAt(
  upper: number,
  lower: number,
  inside: InsideCant,
  least: number,
  order: CantOrder,
  thickness = inches(upper + lower),
): Cant | undefined {
  const { over, under, worth, pieces } = sidesAt(upper, lower, order);
  const way = inside.best(least - worth);
  if (!way) return undefined;
  const offset = upper - thickness / 2;
  return { thickness, offset, worth: worth + way.worth, pieces: pieces + way.pieces, inside: way, under, over };
}

/**
 * The same boards from a cant that is as thin as it may be with one of its faces left in place: as thick as a board is
 * wide if that can be, else as boards side by side.
 */
function thinnest(cant: Cant, insides: CantInsides, order: CantOrder, { scaleStep }: Sawing): Cant {
  const upper = cant.offset + cant.thickness / 2;
  const lower = cant.thickness / 2 - cant.offset;
  const fits = (thickness: Inches, isUpperMoved: boolean): Cant | undefined => {
    const [top, bottom] = isUpperMoved ? [thickness - lower, lower] : [upper, thickness - upper];
    if (top < order.facesBeyond.high - HAIR || 0 - bottom > order.facesBeyond.low + HAIR) return undefined;
    const inside = insides.between({ left: 0 - top, right: bottom });
    const found = cantAt(top, bottom, inside, cant.worth - HAIR * Math.max(1, cant.worth), order, thickness);
    return found && asGood(found, cant) ? found : undefined;
  };
  for (const widths of [order.boardWidths, insides.widths]) {
    const thicknesses = [...new Set(widths.map((width) => inches(markFrom(width, scaleStep))))]
      .filter((thickness) => thickness >= order.bladeAboveBed && thickness < cant.thickness)
      .sort((a, b) => a - b);
    for (const isUpperMoved of upper > lower ? [true, false] : [false, true]) {
      let found: Cant | undefined;
      let [from, to] = [0, thicknesses.length];
      while (from < to) {
        const middle = (from + to) >> 1;
        const one = fits(thicknesses[middle] as Inches, isUpperMoved);
        found = one ?? found;
        if (one) to = middle;
        else from = middle + 1;
      }
      if (found) return found;
    }
  }
  return cant;
}
