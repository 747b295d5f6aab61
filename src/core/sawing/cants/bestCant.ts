import type { Inches } from "../../basis/units";
import { toTheBark, type Sides } from "../sides";
import { HAIR } from "../filling/hair";
import { asGood } from "../filling/way";
import type { Sawing } from "../sawnFlitch";
import type { Cant, CantOrder } from "./cantOrder";
import { cantInsides, type InsideCant } from "./insideCant";
import { placesOf, type CantPlace } from "./places";
import { thicknessesOf } from "./thicknesses";

/**
 * The best cant of a straight log that is sawn parallel to its pith, of all thicknesses and at all heights that hold the
 * pith, sawn into what is worth most, with the best side boards live-sawn above and below. Exact, without a grid; on a
 * scale, of all cants with their faces on its marks.
 *
 * Let its faces lie a and b from the pith, a >= b (the log is the same upside down), and let G(y) be what the best side
 * boards beyond y are worth, C(a, b) what the cant is:
 *
 *     total = C(a, b) + G(a) + G(b)
 *
 * Thickness: a flitch lies in the cant where  w <= min(a, h) + min(b, h),  h half the chord of its outer face. Let w be
 * the widest one inside. The cant may then be as thin as w and lose nothing: with a lowered to w - b or, where that is
 * less than b, with both faces at w / 2, every flitch inside still has its place; and G never grows with y. So only total
 * widths of flitches need be tried, one board or several side by side, as far from the pith as one of that width lies
 * in the cant; and the thinnest cant that the mill can saw. What a scale adds to them see thicknesses.ts.
 *
 * Height, for one thickness c, its middle e above the pith: C never grows with e, since no board inside gains when the
 * nearer face comes nearer. G(c / 2 + e) cannot grow either, G(c / 2 - e) grows in steps. So only e = 0 and those steps
 * need be tried where the side boards are worth more than at any smaller e. For the same reason a ceiling on C at one e
 * holds at all greater ones: a run of heights whose side boards cannot make up for the rest is left out, and any other is
 * halved.
 */
export function bestCant(order: CantOrder, sawing: Sawing): Cant | undefined {
  const insides = cantInsides(order, sawing);
  const bothSides = { under: order.sideBoards("bottom", toTheBark), over: order.sideBoards("top", toTheBark) };
  const reachOf = (width: Inches, thickness: Inches) =>
    farthestThat((offset) => insides.holds(width, sidesOfCant(thickness, offset)), thickness / 2);
  const runs = thicknessesOf(order, insides.widths, reachOf, sawing.scaleStep)
    .flatMap(({ thickness, farthest }, rank) => {
      const places = placesOf(thickness, farthest, order, bothSides, sawing).filter((run) => run.length > 0);
      if (places.length === 0) return [];
      const onPith = insides.between(sidesOfCant(thickness, 0));
      return places.map((run): Run => ({ thickness, rank, places: run, onPith }));
    })
    .sort((a, b) => mostOf(b) - mostOf(a) || a.rank - b.rank);

  let best: (Cant & { readonly rank: number }) | undefined;
  const least = () => {
    const needed = Math.max(best?.worth ?? 0, order.toBeat ?? 0);
    return needed - HAIR * Math.max(1, needed);
  };
  /** Tries a place; the answer is the most that the cant can be worth there, and so farther from the pith. */
  const offer = ({ thickness, places, rank, onPith }: Run, at: number, ceiling: number): number => {
    const { offset, under, over, worth, pieces } = places[at] as CantPlace;
    const inside = offset === 0 ? onPith : insides.between(sidesOfCant(thickness, offset));
    const most = Math.min(inside.most, ceiling);
    if (most + worth < least()) return most;
    const way = inside.best(least() - worth);
    if (!way) return Math.min(most, least() - worth);
    const found = { worth: worth + way.worth, pieces: pieces + way.pieces };
    const isFirst = !best || rank < best.rank || (rank === best.rank && Math.abs(offset) < Math.abs(best.offset));
    if (!best || !asGood(best, found) || (isFirst && asGood(found, best))) {
      best = { thickness, offset, ...found, inside: way, under, over, rank };
    }
    return way.worth;
  };
  const search = (run: Run, from: number, to: number, ceiling: number): void => {
    if (from >= to || ceiling + (run.places[to - 1] as CantPlace).worth < least()) return;
    const at = (from + to) >> 1;
    const there = offer(run, at, ceiling);
    search(run, from, at, ceiling);
    search(run, at + 1, to, there);
  };
  const nearest = runs.map((run) => offer(run, 0, run.onPith.most));
  runs.forEach((run, i) => search(run, 1, run.places.length, nearest[i] as number));
  return best;
}

/** Places of a cant of one thickness on one side of the pith, and what it can be sawn into with the pith in its middle. */
interface Run {
  readonly thickness: Inches;
  /** Of cants worth the same, in as many pieces, one of the lowest rank is kept. */
  readonly rank: number;
  readonly places: readonly CantPlace[];
  readonly onPith: InsideCant;
}

/** The most that the first place of a run can be worth. */
const mostOf = ({ onPith, places }: Run) => onPith.most + (places[0] as CantPlace).worth;

/** How far it holds, from 0 up to a limit; what holds somewhere holds nearer as well. */
function farthestThat(holds: (offset: number) => boolean, limit: number): number {
  if (!holds(0)) return -Infinity;
  if (holds(limit)) return limit;
  let [near, far] = [0, limit];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (near + far) / 2;
    if (holds(middle)) near = middle;
    else far = middle;
  }
  return far;
}

const HALVINGS = 20; // leaves a millionth of the limit, and the answer is never too near

/** The sides of a cant that lies on its edge, its upper face to the left. */
export const sidesOfCant = (thickness: number, offset: number): Sides => ({
  left: 0 - offset - thickness / 2,
  right: thickness / 2 - offset,
});
