import type { Outline } from "../../src/core/sawing/outline";

/** A log of any shape, in plain numbers: diameters level and upright, sweep level or upright, taper split or full. */
export interface Shape {
  readonly level: readonly [large: number, small: number];
  readonly upright: readonly [large: number, small: number];
  readonly length: number;
  readonly sweepLevel: number;
  readonly sweepUpright: number;
  readonly full: boolean;
  /**
   * Split along its pith by cuts of this kerf, each quarter on its own bark: there the bark farthest from the pith runs
   * along the saw planes, whichever side it is on.
   */
  readonly splitKerf?: number;
}

/** Looked at every so many parts of the length. */
const PARTS = 32;

/** How far a rectangle sticks out of the wood anywhere from the large end to a length, as a share of the radius. */
export function sticksOut(shape: Shape, { left, right: farSide, lower, upper }: Outline, length: number): number {
  let worst = -Infinity;
  for (let i = 0; i <= PARTS; i += 1) {
    const share = (i / PARTS) * (length / shape.length);
    const between = ([large, small]: readonly [number, number]) => (large + (small - large) * share) / 2;
    const [a, b] = [between(shape.level), between(shape.upright)];
    const bow = 4 * share * (1 - share);
    const [across, up] = shape.full ? [shape.level[0] / 2 - a, shape.upright[0] / 2 - b] : [0, 0];
    const { splitKerf } = shape;
    const [right, high] = splitKerf === undefined ? [-1, -1] : [Math.sign(left + farSide), Math.sign(lower + upper)];
    const u = bow * shape.sweepLevel + right * across;
    const v = bow * shape.sweepUpright + high * up;
    if (splitKerf !== undefined) {
      const [inner, under] = [Math.min(Math.abs(left), Math.abs(farSide)), Math.min(Math.abs(lower), Math.abs(upper))];
      worst = Math.max(worst, (across + splitKerf / 2 - inner) / a, (up + splitKerf / 2 - under) / b);
    }
    for (const x of [left, farSide]) {
      for (const y of [lower, upper]) worst = Math.max(worst, Math.hypot((x - u) / a, (y - v) / b) - 1);
    }
  }
  return worst;
}

/** The widest board with its faces where they are: what the chords along it have in common. */
export function widestBoard(shape: Shape, lower: number, thickness: number): number {
  let low = 0;
  let high = Math.max(...shape.level);
  const centres = Array.from(
    { length: 21 },
    (_, i) => ((i - 10) / 10) * (shape.sweepLevel + shape.level[0] - shape.level[1] + 0.01),
  );
  const fits = (width: number) =>
    centres.some((middle) => {
      const outline = { left: middle - width / 2, right: middle + width / 2, lower, upper: lower + thickness };
      return sticksOut(shape, outline as Outline, shape.length) <= 0;
    });
  for (let i = 0; i < 12; i += 1) {
    const width = (low + high) / 2;
    if (fits(width)) low = width;
    else high = width;
  }
  return low;
}
