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
  /**
   * How much thinner the small end of a round log is in radius, where each quarter lies on its own bark and is sawn parallel
   * to it: there the pith runs outwards by as much.
   */
  readonly thinner?: number;
}

/**
 * Every order of thicknesses and faces in which the quarters of a cylinder can be peeled, as long as the rings stand at
 * 45 degrees half-way up. Its sections are ellipses of two diameters and their rings ellipses of the same shape: at (u, v)
 * from the pith a ring runs square to (u / A^2, v / B^2). Where the pith is bent or runs outwards, some section lies anywhere
 * between two that tell, and wood may be sawn away by any number of steps before a board.
 */
export function byEveryPeel(log: Cylinder, quartering: Quartering): number {
  const { diameterUp = log.diameter, sweepLevel = 0, sweepUp = 0, thinner = 0 } = quartering;
  const axis = (half: number, bow: number): Axis => ({
    ends: [
      { half, middle: 0 },
      { half: half - thinner, middle: bow + thinner },
    ],
    pith: { half: half - thinner / 2, middle: bow + thinner / 2 },
    from: thinner + log.kerf / 2,
  });
  const quarter = (right: 1 | -1, up: 1 | -1) =>
    ofOneQuarter(log, quartering, [axis(log.diameter / 2, right * sweepLevel), axis(diameterUp / 2, up * sweepUp)]);
  if (sweepLevel === 0 && sweepUp === 0) return 4 * quarter(1, 1);
  return quarter(1, 1) + quarter(1, -1) + quarter(-1, 1) + quarter(-1, -1);
}

/** Half a diameter of a section, and how far out its middle lies. */
interface Across {
  readonly half: number;
  readonly middle: number;
}

/** Of a quarter, across or up: the two sections that tell, the one where rings are judged, and from where on there is wood. */
interface Axis {
  readonly ends: readonly [Across, Across];
  readonly pith: Across;
  readonly from: number;
}

function ofOneQuarter(
  log: Cylinder,
  { step, isOnScale = false }: Quartering,
  [across, up]: readonly [Axis, Axis],
): number {
  const known = new Map<string, number>();
  const place = (steps: number) => log.kerf / 2 + steps * step;
  const mayPay = [across, up].some(({ ends }) => ends[1].middle !== 0);
  const depths = new Map(
    [across, up].map((along) => [along, kept((at) => depthAt(at, along, along === across ? up : across))]),
  );
  const isInside = (at: number, { ends }: Axis) => ends.some(({ half, middle }) => at < middle + half);
  const peel = (p: number, a: number): number => {
    const key = `${p} ${a}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = 0;
    for (const thickness of thicknessesOf(log)) {
      const pitch = Math.ceil((thickness + log.kerf) / step - 1e-9);
      const sawn = isOnScale ? pitch * step - log.kerf : thickness;
      const off = (face: number, other: number, along: Axis, square: Axis) =>
        face + sawn + log.kerf <= (depths.get(along)?.(other) ?? 0)
          ? flitchOff({ thickness, sawn, face, other }, along, square, log)
          : 0;
      const flat = off(place(a), place(p), across, up);
      const upright = off(place(p), place(a), up, across);
      if (flat > 0) best = Math.max(best, flat + peel(p, a + pitch));
      if (upright > 0) best = Math.max(best, upright + peel(p + pitch, a));
    }
    if (mayPay && isInside(place(p), across)) best = Math.max(best, peel(p + 1, a));
    if (mayPay && isInside(place(a), up)) best = Math.max(best, peel(p, a + 1));
    known.set(key, best);
    return best;
  };
  return peel(0, 0);
}

function kept(depth: (other: number) => number): typeof depth {
  const known = new Map<number, number>();
  return (other) => {
    const before = known.get(other) ?? depth(other);
    known.set(other, before);
    return before;
  };
}

/** How deep the wood under a face reaches beside the other one: to the bark of that section which reaches farthest. */
function depthAt(other: number, along: Axis, square: Axis): number {
  const depths = Array.from({ length: DEPTHS + 1 }, (_, i) => {
    const between = ([one, two]: Axis["ends"]): Across => ({
      half: one.half + ((two.half - one.half) * i) / DEPTHS,
      middle: one.middle + ((two.middle - one.middle) * i) / DEPTHS,
    });
    const [wide, deep] = [between(along.ends), between(square.ends)];
    const inside = 1 - ((other - wide.middle) / wide.half) ** 2;
    return inside < 0 ? 0 : deep.middle + deep.half * Math.sqrt(inside);
  });
  return Math.max(...depths);
}

/** Sections between the two that tell. */
const DEPTHS = 400;

interface Place {
  /** As listed, and as it is sawn. */
  readonly thickness: number;
  readonly sawn: number;
  readonly face: number;
  readonly other: number;
}

/** What the best flitch off a face is worth, the other face standing at `other`. */
function flitchOff({ thickness, sawn, face, other }: Place, along: Axis, square: Axis, log: Cylinder): number {
  if (face < square.from - 1e-9) return 0;
  let [left, right] = [Math.max(other, along.from), Infinity];
  for (const end of [0, 1] as const) {
    const [wide, deep] = [along.ends[end], square.ends[end]];
    const outer = Math.max(Math.abs(face - deep.middle), Math.abs(face + sawn - deep.middle));
    if (outer >= deep.half) return 0;
    const chord = wide.half * Math.sqrt(1 - (outer / deep.half) ** 2);
    left = Math.max(left, wide.middle - chord);
    right = Math.min(right, wide.middle + chord);
  }
  const ofThickness = log.sizes.filter((size) => size.thickness === thickness);
  // Of flitches that end where the wood does, those that begin where it begins and whose middle is steep enough.
  const rooms = totalWidths({ ...log, sizes: ofThickness }, right).filter((width) => {
    const [fromPith, above] = [right - width / 2 - along.pith.middle, face + sawn / 2 - square.pith.middle];
    const isSteep = fromPith / along.pith.half ** 2 >= Math.abs(above) / square.pith.half ** 2;
    return left + width <= right && isSteep;
  });
  return worthAcross(ofThickness, Math.max(0, ...rooms), log.kerf, log.length);
}
