import highsLoader from "highs";
import { feet, inches } from "../../src/core/basis/units";
import type { BoardPiece } from "../../src/core/sawing/boardSize";
import type { SawLog } from "../../src/core/sawing/sawLog";
import type { ChoiceOrder } from "../../src/core/sawing/wanted/choice";
import { logSource } from "../../src/core/sawing/wanted/logSource";
import { highsProgram } from "../../src/pane/solver/highsProgram";
import { sawLog } from "./sawing";

export const highs = await highsLoader();
export const newProgram = highsProgram(highs);

export const piece = (thickness: number, width: number, length: number): BoardPiece => ({
  thickness: inches(thickness),
  width: inches(width),
  length: feet(length),
});

/** Runs a search to its end. */
export function finished<Progress, Result>(search: Generator<Progress, Result>): Result {
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

/** Invented numbers that come out the same every time, from 0 up to 1. */
export function invented(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
}

/** Ten invented cross-sections and their lengths: thirty lines of a cut list. */
const sections: readonly (readonly [thickness: number, width: number, lengths: readonly number[]])[] = [
  [2, 4, [8, 10, 12, 16]],
  [2, 6, [8, 10, 12, 14, 16]],
  [2, 8, [10, 12, 16]],
  [2, 10, [12, 16]],
  [6, 6, [8, 10, 12]],
  [1, 4, [8, 12, 16]],
  [1, 6, [8, 10, 12, 16]],
  [1, 8, [8, 12, 16]],
  [1, 10, [12, 16]],
  [4, 4, [8]],
];
export const thirtyPieces = sections.flatMap(([thickness, width, lengths]) =>
  lengths.map((length) => piece(thickness, width, length)),
);

/** Invented logs, 8 to 20 in at the small end and 8 to 16 ft long. */
export function yardOf(logs: number, seed: number): readonly SawLog[] {
  const chance = invented(seed);
  return Array.from({ length: logs }, () => {
    const smallEnd = Math.round(80 + chance() * 120) / 10;
    const length = 8 + 2 * Math.floor(chance() * 5);
    return sawLog(smallEnd, Math.round((smallEnd + length * (0.08 + 0.08 * chance())) * 10) / 10, length);
  });
}

/** The thirty pieces from a yard; a share of 1 asks for somewhat more than half of what it would saw out to. */
export function cutListOrder(yard: readonly SawLog[], share: number, seed: number): ChoiceOrder {
  const chance = invented(seed + 1);
  const counts = thirtyPieces.map(({ thickness }) =>
    Math.max(1, Math.round(share * (yard.length / 200) * (thickness >= 4 ? 8 + chance() * 8 : 20 + chance() * 60))),
  );
  const sawing = { pieces: thirtyPieces, kerf: inches(0.125), mill: {} };
  return {
    sources: yard.map((log, i) => logSource([`log ${i + 1}`], log, sawing)),
    pieces: thirtyPieces,
    counts,
    kerf: 0.125,
    goal: "least wood",
  };
}
