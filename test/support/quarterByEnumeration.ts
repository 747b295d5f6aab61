import { thicknessesOf, totalWidths, type Cylinder } from "./patternsByEnumeration";
import { worthAcross } from "./sawingByEnumeration";

/** How a cylinder lies to be quartered, and how its settings go. */
export interface Quartering {
  /** Settings are whole steps. */
  readonly step: number;
  /** The steps are those of a scale: a board is as thick as two settings lie apart, less the kerf. */
  readonly isOnScale?: boolean;
  readonly diameterUp?: number;
  /** Bow of the pith half-way up, to the right or upwards. */
  readonly sweepLevel?: number;
  readonly sweepUp?: number;
}

/**
 * Every order of thicknesses and faces in which the quarters of a cylinder can be peeled, as long as the rings stand at
 * 45 degrees half-way up. Its sections are ellipses of two diameters and their rings ellipses of the same shape: at (u, v)
 * from the pith a ring runs square to (u / A^2, v / B^2). Where the pith is bent, some section lies anywhere between the
 * ends' and the middle's, and wood may be sawn away by any number of steps before a board.
 */
export function byEveryPeel(log: Cylinder, quartering: Quartering): number {
  const { diameterUp = log.diameter, sweepLevel = 0, sweepUp = 0 } = quartering;
  const quarter = (right: 1 | -1, up: 1 | -1) =>
    ofOneQuarter(log, quartering, [
      { half: log.diameter / 2, bow: right * sweepLevel },
      { half: diameterUp / 2, bow: up * sweepUp },
    ]);
  if (sweepLevel === 0 && sweepUp === 0) return 4 * quarter(1, 1);
  return quarter(1, 1) + quarter(1, -1) + quarter(-1, 1) + quarter(-1, -1);
}

/** Half a diameter, and how far the middle of the log is bowed to the bark of this quarter; across and up. */
interface Axis {
  readonly half: number;
  readonly bow: number;
}

function ofOneQuarter(
  log: Cylinder,
  { step, isOnScale = false }: Quartering,
  [across, up]: readonly [Axis, Axis],
): number {
  const known = new Map<string, number>();
  const place = (steps: number) => log.kerf / 2 + steps * step;
  const isSwept = across.bow !== 0 || up.bow !== 0;
  const peel = (p: number, a: number): number => {
    const key = `${p} ${a}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = 0;
    for (const thickness of thicknessesOf(log)) {
      const pitch = Math.ceil((thickness + log.kerf) / step - 1e-9);
      const sawn = isOnScale ? pitch * step - log.kerf : thickness;
      const off = (face: number, other: number, along: Axis, square: Axis) =>
        face + sawn + log.kerf <= depthAt(other, along, square)
          ? flitchOff({ thickness, sawn, face, other }, along, square, log)
          : 0;
      const flat = off(place(a), place(p), across, up);
      const upright = off(place(p), place(a), up, across);
      if (flat > 0) best = Math.max(best, flat + peel(p, a + pitch));
      if (upright > 0) best = Math.max(best, upright + peel(p + pitch, a));
    }
    if (isSwept && place(p) < across.half + Math.abs(across.bow)) best = Math.max(best, peel(p + 1, a));
    if (isSwept && place(a) < up.half + Math.abs(up.bow)) best = Math.max(best, peel(p, a + 1));
    known.set(key, best);
    return best;
  };
  return peel(0, 0);
}

/** How deep the wood under a face reaches beside the other one: to the bark of that section which reaches farthest. */
function depthAt(other: number, along: Axis, square: Axis): number {
  const nearest = Math.max(Math.min(0, along.bow), Math.min(Math.max(0, along.bow), other));
  const inside = 1 - ((other - nearest) / along.half) ** 2;
  return inside < 0 ? 0 : Math.max(0, square.bow) + square.half * Math.sqrt(inside);
}

interface Place {
  /** As listed, and as it is sawn. */
  readonly thickness: number;
  readonly sawn: number;
  readonly face: number;
  readonly other: number;
}

/** What the best flitch off a face is worth, the other face standing at `other`. */
function flitchOff({ thickness, sawn, face, other }: Place, along: Axis, square: Axis, log: Cylinder): number {
  let [left, right] = [other, Infinity];
  for (const share of [0, 1]) {
    const outer = Math.max(Math.abs(face - share * square.bow), Math.abs(face + sawn - share * square.bow));
    if (outer >= square.half) return 0;
    const chord = along.half * Math.sqrt(1 - (outer / square.half) ** 2);
    left = Math.max(left, share * along.bow - chord);
    right = Math.min(right, share * along.bow + chord);
  }
  const ofThickness = log.sizes.filter((size) => size.thickness === thickness);
  // Of flitches that end where the wood does, those that begin where it begins and whose middle is steep enough.
  const rooms = totalWidths({ ...log, sizes: ofThickness }, right).filter((width) => {
    const fromPith = right - width / 2 - along.bow;
    const isSteep = fromPith / along.half ** 2 >= Math.abs(face + sawn / 2 - square.bow) / square.half ** 2;
    return left + width <= right && isSteep;
  });
  return worthAcross(ofThickness, Math.max(0, ...rooms), log.kerf, log.length);
}
