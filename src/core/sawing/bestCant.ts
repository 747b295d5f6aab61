import type { Inches } from "../basis/units";
import { bestStack, type BedLimits } from "./bestStack";
import { toTheBark, type Sides } from "./sides";
import { HAIR } from "./filling/hair";
import { asGood, bestBelow, type Way } from "./filling/way";
import type { Flitch } from "./flitches";
import type { RoomFor } from "./room";
import type { SideBoards } from "./sideBoards";
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

export interface CantOrder extends BedLimits {
  /** A cant worth less may be left out. */
  readonly toBeat?: number;
  /** As they come off the saw. */
  readonly thicknesses: readonly Inches[];
  /** Flitches that the cant may be sawn into. */
  readonly inside: readonly (readonly Flitch[])[];
  readonly roomFor: RoomFor;
  readonly sideBoards: SideBoards;
  /** One face of the cant lies at or under the lower of these, the other at or over the upper: between them a cut would
   * be too wide. [in] */
  readonly facesBeyond: { readonly low: number; readonly high: number };
}

/** What a cant is sawn into, and what is sawn off above and below it. */
export interface CantSearch {
  readonly order: CantOrder;
  readonly inside: (thickness: number, sides: Sides) => Way<Flitch> | undefined;
  /** Ways to saw the wood under a plane at or below the pith, and, seen from above, over one at or above it. */
  readonly under: readonly Way<Flitch>[];
  readonly over: readonly Way<Flitch>[];
}

export function cantSearch(order: CantOrder, sawing: Sawing): CantSearch {
  const narrowerThan = new Map<number, readonly (readonly Flitch[])[]>();
  return {
    order,
    inside: (thickness, sides) => {
      const narrow = narrowerThan.get(thickness) ?? narrowed(order.inside, thickness);
      narrowerThan.set(thickness, narrow);
      return bestStack(narrow, "right", sides, order.roomFor, order, sawing);
    },
    under: order.sideBoards("bottom", toTheBark),
    over: order.sideBoards("top", toTheBark),
  };
}

const narrowed = (groups: readonly (readonly Flitch[])[], most: number) =>
  groups.map((group) => group.filter(({ width }) => width <= most)).filter((group) => group.length > 0);

/**
 * The best cant of all given thicknesses at all heights that hold the pith, each sawn into what is worth most, with the
 * best side boards live-sawn above and below.
 *
 * Of a plain log that is set anywhere; exact, without a grid. Let the cant's middle lie e above the pith (below it
 * everything is the same in a mirror), and let G(y) be what the best side boards under a plane at y are worth, C(e) what
 * the cant is:
 *
 *     total(e) = C(e) + G(e - c/2) + G(-e - c/2),   c  thickness of the cant
 *
 * C never grows with e: moving the cant away from the pith brings its nearer face nearer, and no board inside gains by
 * that, see reachOf. The second G cannot grow either. The first grows in steps, at the heights of the ways to fill the
 * wood below. So only e = 0 and those steps need be tried.
 */
export function bestCant(order: CantOrder, sawing: Sawing): Cant | undefined {
  const search = cantSearch(order, sawing);
  return order.thicknesses.reduce<Cant | undefined>(
    (best, thickness) => bestOfThickness(thickness, search, best),
    undefined,
  );
}

/**
 * Since C never grows, its value at one offset bounds it at all farther ones: a run of offsets whose side boards cannot
 * make up for the rest is left out, and any other is halved.
 */
function bestOfThickness(
  thickness: Inches,
  { order, inside, under: sideBoards }: CantSearch,
  bestSoFar: Cant | undefined,
): Cant | undefined {
  const { toBeat = 0 } = order;
  const places = offsetsOf(thickness, sideBoards, order.facesBeyond.high).map((offset) => {
    const under = bestBelow(sideBoards, offset - thickness / 2);
    const over = bestBelow(sideBoards, 0 - offset - thickness / 2);
    return {
      offset,
      under,
      over,
      worth: worthIn(under) + worthIn(over),
      pieces: piecesIn(under) + piecesIn(over),
    };
  });
  let best = bestSoFar;
  /** Tries a place; the answer is what is inside there, the most that it can be worth farther from the pith. */
  const offer = (at: number): number => {
    const { offset, under, over, worth, pieces } = places[at] as (typeof places)[number];
    const way = inside(thickness, sidesOfCant(thickness, offset));
    if (!way) return -Infinity;
    const cant = { thickness, offset, worth: worth + way.worth, pieces: pieces + way.pieces, inside: way, under, over };
    if (!(best && asGood(best, cant))) best = cant;
    return way.worth;
  };
  const search = (from: number, to: number, most: number): void => {
    if (from >= to) return;
    let mostOutside = 0;
    for (let i = from; i < to; i += 1) mostOutside = Math.max(mostOutside, worthAt(i));
    const needed = Math.max(best?.worth ?? 0, toBeat);
    if (mostOutside + most <= needed + HAIR * Math.max(1, needed)) return;
    const at = (from + to) >> 1;
    const there = offer(at);
    search(from, at, most);
    search(at + 1, to, there);
  };
  const worthAt = (i: number) => (places[i] as (typeof places)[number]).worth;
  if (places.length > 0) search(1, places.length, offer(0));
  return best;
}

/** The sides of a cant that lies on its edge, its upper face to the left. */
export const sidesOfCant = (thickness: number, offset: number): Sides => ({
  left: 0 - offset - thickness / 2,
  right: thickness / 2 - offset,
});

/** The offsets worth trying, from the pith outwards. */
function offsetsOf(thickness: number, sideBoards: readonly Way<Flitch>[], facesFrom: number): readonly number[] {
  const most = thickness / 2 - facesFrom;
  const steps = sideBoards.map(({ free }) => free + thickness / 2).filter((offset) => offset > 0 && offset <= most);
  return most < 0 ? [] : [0, ...steps];
}

export const worthIn = (way: Way<Flitch> | undefined): number => way?.worth ?? 0;
export const piecesIn = (way: Way<Flitch> | undefined): number => way?.pieces ?? 0;
