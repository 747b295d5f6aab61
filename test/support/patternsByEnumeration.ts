import type { BoardSize } from "../../src/core/sawing/boardSize";
import { worthAcross } from "./sawingByEnumeration";

/** A cylinder with everything that its sawing needs; all boards run its length, priced per MBF or by the board foot. */
export interface Cylinder {
  readonly diameter: number;
  readonly length: number;
  readonly sizes: readonly BoardSize[];
  readonly kerf: number;
}

export const distinct = (values: readonly number[]) => [...new Set(values)];
export const thicknessesOf = ({ sizes }: Cylinder) => distinct(sizes.map(({ thickness }) => thickness));

/** Worth of the boards of a thickness from a plane on, in the wood between a left and a right plane and the bark. */
function worthThere(thickness: number, from: number, left: number, right: number, log: Cylinder): number {
  const outer = Math.max(Math.abs(from), Math.abs(from + thickness));
  if (outer >= log.diameter / 2) return 0;
  const half = Math.sqrt((log.diameter / 2) ** 2 - outer ** 2);
  const ofThickness = log.sizes.filter((size) => size.thickness === thickness);
  return worthAcross(ofThickness, Math.min(right, half) - Math.max(left, 0 - half), log.kerf, log.length);
}

/** Every order of thicknesses from a plane outwards to the bark, the first kerf next to the plane. */
export function outwards(plane: number, left: number, right: number, log: Cylinder): number {
  const from = plane + log.kerf;
  return thicknessesOf(log)
    .filter((thickness) => from + thickness < log.diameter / 2)
    .reduce((best, thickness) => {
      const further = outwards(from + thickness, left, right, log);
      return Math.max(best, worthThere(thickness, from, left, right, log) + further);
    }, 0);
}

/** Every order and every telling offset of thicknesses inside a cant that stands between two planes. */
export function insideCant(left: number, right: number, log: Cylinder): number {
  const near = Math.min(0 - left, right);
  const reaches = totalWidths(log, right - left)
    .map((width) => (log.diameter / 2) ** 2 - Math.max(width / 2, width - near) ** 2)
    .filter((square) => square >= 0)
    .map(Math.sqrt);
  let best = 0;
  const tryOrder = (order: readonly number[], height: number): void => {
    const lowers = order.map((_, i) => order.slice(0, i).reduce((sum, one) => sum + one + log.kerf, 0));
    const offsets = order.flatMap((thickness, i) =>
      reaches.flatMap((reach) => [0 - reach, reach - thickness].map((place) => place - (lowers[i] as number))),
    );
    for (const offset of distinct(offsets)) {
      const worths = order.map((one, i) => worthThere(one, offset + (lowers[i] as number), left, right, log));
      best = Math.max(
        best,
        worths.reduce((sum, one) => sum + one, 0),
      );
    }
    for (const thickness of thicknessesOf(log)) {
      if (height + thickness <= log.diameter) tryOrder([...order, thickness], height + thickness + log.kerf);
    }
  };
  tryOrder([], 0);
  return best;
}

/**
 * A cant between any two faces, one on either side of the pith. A face moved outwards leaves the cant no narrower, and so
 * only the outermost of those need be tried that leave the same worth of side boards: there some pile of boards and kerfs
 * just reaches where some width allows; or the bark. What such faces miss would show at the further ones.
 *
 * @param further two faces each, as shares of the radius
 */
export function byEveryCant(log: Cylinder, further: readonly (readonly [number, number])[] = []): number {
  const radius = log.diameter / 2;
  const reaches = totalWidths(log, log.diameter).map((width) => Math.sqrt(radius ** 2 - (width / 2) ** 2));
  const telling = reaches.flatMap((reach) => distinct(depthsOf(log, 0)).map((depth) => reach - depth));
  const faces = distinct([radius, ...telling])
    .filter((from) => from >= 0)
    .sort((a, b) => b - a)
    .map((from) => ({ from, sides: outwards(from, -Infinity, Infinity, log) }));
  const outermost = faces.filter(
    ({ sides }, i) => i === 0 || sides > Math.max(...faces.slice(0, i).map((o) => o.sides)),
  );
  const worth = (upper: number, lower: number, sides: number) => worthIfAny(insideCant(0 - lower, upper, log), sides);
  const atFaces = outermost.flatMap((upper, i) =>
    outermost.slice(i).map((lower) => worth(upper.from, lower.from, upper.sides + lower.sides)),
  );
  const anywhere = further.map(([one, other]) => {
    const [upper, lower] = [one * radius, other * radius];
    const sides = outwards(upper, -Infinity, Infinity, log) + outwards(lower, -Infinity, Infinity, log);
    return worth(upper, lower, sides);
  });
  return Math.max(0, ...atFaces, ...anywhere);
}

/** A cant that gives nothing is no cant. */
const worthIfAny = (inside: number, sides: number) => (inside > 0 ? inside + sides : 0);

/** Every listed size as the heart, flat and upright, and every order of boards on the four faces around it. */
export function byEveryHeart(log: Cylinder): number {
  const hearts = log.sizes.flatMap((size) => [
    { size, across: size.width, up: size.thickness },
    { size, across: size.thickness, up: size.width },
  ]);
  return hearts.reduce((best, { size, across, up }) => {
    if (Math.hypot(across, up) > log.diameter) return best;
    const heart = (size.thickness * size.width * log.length * (size.price ?? 1000)) / 12_000;
    const faces = [
      outwards(up / 2, -Infinity, Infinity, log),
      outwards(across / 2, up / -2, Infinity, log),
      outwards(up / 2, across / -2, Infinity, log),
      outwards(across / 2, up / -2, up / 2, log),
    ];
    return Math.max(
      best,
      faces.reduce((sum, one) => sum + one, heart),
    );
  }, 0);
}

/** Every total width that boards of one thickness side by side can have. */
export function totalWidths(log: Cylinder, room: number): readonly number[] {
  const grow = (widths: readonly number[], left: number): number[] =>
    widths.flatMap((width) =>
      width > left + 1e-9
        ? []
        : [width, ...grow(widths, left - width - log.kerf).map((more) => width + log.kerf + more)],
    );
  const widthsOf = (thickness: number) =>
    log.sizes.filter((size) => size.thickness === thickness).map((size) => Number(size.width));
  return distinct(thicknessesOf(log).flatMap((thickness) => grow(widthsOf(thickness), room)));
}

/** How deep every pile of boards and kerfs reaches. */
function depthsOf(log: Cylinder, from: number): number[] {
  return thicknessesOf(log).flatMap((thickness) => {
    const depth = from + log.kerf + thickness;
    return depth > log.diameter / 2 ? [] : [depth, ...depthsOf(log, depth)];
  });
}
