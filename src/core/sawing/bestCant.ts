import type { Inches } from "../basis/units";
import { candidates, type Sides } from "./candidates";
import { asGood, bestBelow, waysToFill, type Way } from "./fill";
import type { Flitch } from "./flitches";
import type { Sawing } from "./sawnFlitch";

/** A cant at the place where it is worth most, with the side boards above and below it. */
export interface Cant {
  readonly thickness: Inches;
  /** Of its middle above the pith; never below it. [in] */
  readonly offset: number;
  readonly worth: number;
  readonly pieces: number;
  /** What it is sawn into when it has been turned. */
  readonly inside: Way<Flitch>;
  /** The side boards under its lower face, and, seen from above, those over its upper face. */
  readonly under: Way<Flitch> | undefined;
  readonly over: Way<Flitch> | undefined;
}

export interface CantOrder {
  readonly thicknesses: readonly Inches[];
  /** Flitches that the cant may be sawn into, and those that the wood outside may. */
  readonly inside: readonly (readonly Flitch[])[];
  readonly outside: readonly (readonly Flitch[])[];
  readonly bladeAboveBed: number;
  readonly throat: number;
  /** Both faces of the cant lie at least so far from the pith: nearer to it the cut would be too wide. [in] */
  readonly facesFrom: number;
}

/**
 * The best cant of all given thicknesses at all heights that hold the pith, each sawn into what is worth most, with the
 * best side boards live-sawn above and below.
 *
 * Exact, without a grid. Let the cant's middle lie e above the pith (below it everything is the same in a mirror), and
 * let G(y) be what the best side boards under a plane at y are worth, C(e) what the cant is:
 *
 *     total(e) = C(e) + G(e - c/2) + G(-e - c/2),   c  thickness of the cant
 *
 * C never grows with e: moving the cant away from the pith brings its nearer face nearer, and no board inside gains by
 * that, see reachOf. The second G cannot grow either. The first grows in steps, at the heights of the ways to fill the
 * wood below. So only e = 0 and those steps need be tried.
 */
export function bestCant(order: CantOrder, sawing: Sawing): Cant | undefined {
  const sideBoards = waysToFill(candidates(sawing.log, order.outside, sawing.wane), sawing.kerf);
  return order.thicknesses.reduce<Cant | undefined>(
    (best, thickness) => bestOfThickness(thickness, sideBoards, best, order, sawing),
    undefined,
  );
}

/**
 * Since C never grows, its value at one offset bounds it at all farther ones, and so a run of offsets whose
 * side boards cannot make up for the rest is left out, and any other is halved.
 */
function bestOfThickness(
  thickness: Inches,
  sideBoards: readonly Way<Flitch>[],
  bestSoFar: Cant | undefined,
  order: CantOrder,
  sawing: Sawing,
): Cant | undefined {
  const inside = insideOf(thickness, order, sawing);
  const places = offsetsOf(thickness, sideBoards, order.facesFrom).map((offset) => {
    const under = bestBelow(sideBoards, offset - thickness / 2);
    const over = bestBelow(sideBoards, 0 - offset - thickness / 2);
    return { offset, under, over, worth: worthIn(under) + worthIn(over), pieces: piecesIn(under) + piecesIn(over) };
  });
  let best = bestSoFar;
  const mayWin = (from: number, to: number, most: Way<Flitch>) =>
    places
      .slice(from, to)
      .some(({ worth, pieces }) => !(best && asGood(best, { worth: worth + most.worth, pieces: pieces + 1 })));
  const offer = (at: number): Way<Flitch> | undefined => {
    const { offset, under, over, worth, pieces } = places[at] as (typeof places)[number];
    const way = inside(offset);
    if (!way) return undefined;
    const cant = { thickness, offset, worth: worth + way.worth, pieces: pieces + way.pieces, inside: way, under, over };
    if (!(best && asGood(best, cant))) best = cant;
    return way;
  };
  const between = (from: number, to: number, most: Way<Flitch>): void => {
    if (from >= to || !mayWin(from, to, most)) return;
    const middle = (from + to) >> 1;
    const there = offer(middle);
    between(from, middle, most);
    if (there) between(middle + 1, to, there);
  };
  const atPith = places.length > 0 ? offer(0) : undefined;
  if (atPith) between(1, places.length, atPith);
  return best;
}

/** The sides of a cant that lies on its edge, its upper face to the left. */
export const sidesOfCant = (thickness: number, offset: number): Sides => ({
  left: 0 - offset - thickness / 2,
  right: thickness / 2 - offset,
});

function insideOf(thickness: Inches, order: CantOrder, { log, kerf, wane }: Sawing) {
  const groups = order.inside
    .map((group) => group.filter(({ width }) => width <= thickness))
    .filter((group) => group.length > 0);
  return (offset: number): Way<Flitch> | undefined => {
    const slots = candidates(log, groups, wane, sidesOfCant(thickness, offset));
    const way = waysToFill(slots, kerf, { leastOfOne: order.bladeAboveBed, mostOfOthers: order.throat }).at(-1);
    return way?.top && way;
  };
}

/** The offsets worth trying, from the pith outwards. */
function offsetsOf(thickness: number, sideBoards: readonly Way<Flitch>[], facesFrom: number): readonly number[] {
  const most = thickness / 2 - facesFrom;
  const steps = sideBoards.map(({ free }) => free + thickness / 2).filter((offset) => offset > 0 && offset <= most);
  return most < 0 ? [] : [0, ...steps];
}

const worthIn = (way: Way<Flitch> | undefined): number => way?.worth ?? 0;
const piecesIn = (way: Way<Flitch> | undefined): number => way?.pieces ?? 0;
