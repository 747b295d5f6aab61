import type { BuckStep } from "./buckSteps";

/** A piece of the stem seen from the side: straight lines from one end to the other. */
export interface StemPiece {
  /** Number of the log; 0 for what is not sold. */
  readonly log: number;
  readonly from: number;
  readonly to: number;
  readonly largeEnd: number;
  readonly smallEnd: number;
}

/** The whole stem from the ground up, logs and what is left between them. */
export interface StemSide {
  readonly pieces: readonly StemPiece[];
  readonly top: number;
  /** Thickest of the logs. */
  readonly thickest: number;
}

/**
 * The side view of a stem that was cut. What is left out is drawn too: the stump, stretches between logs, and the top,
 * which runs to a point where the height of the tip is known.
 *
 * @param tip height of the tip; undefined where only the logs were counted
 */
export function stemSideOf(steps: readonly BuckStep[], tip: number | undefined): StemSide {
  const first = steps[0];
  const last = steps.at(-1);
  if (!first || !last) return { pieces: [], top: 0, thickest: 0 };
  const pieces: StemPiece[] = [];
  const leave = (from: number, to: number, largeEnd: number, smallEnd: number) => {
    if (to - from > 1e-6) pieces.push({ log: 0, from, to, largeEnd, smallEnd });
  };
  leave(0, first.from, first.largeEnd, first.largeEnd);
  steps.forEach((step, place) => {
    pieces.push({ log: step.number, ...step });
    const next = steps[place + 1];
    if (next) leave(step.to, next.from, step.smallEnd, next.largeEnd);
  });
  if (tip !== undefined) leave(last.to, tip, last.smallEnd, 0);
  return { pieces, top: Math.max(last.to, tip ?? 0), thickest: Math.max(...steps.map(({ largeEnd }) => largeEnd)) };
}

/** Heights that the ruler below the stem names: about six of them, at whole tens or fives. */
export function rulerOf(top: number): readonly number[] {
  const step = [1, 2, 5, 10, 20, 50, 100].find((one) => top / one <= 6) ?? 100;
  return Array.from({ length: Math.floor(top / step) + 1 }, (_, i) => i * step);
}
