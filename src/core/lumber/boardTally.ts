import { boardFeet, type BoardFeet } from "../basis/units";
import type { BoardLine, TallyMeasure } from "./tallyMeasure";

/** Boards of one size, or of one group. */
export interface TallyPart {
  readonly name: string;
  readonly pieces: number;
  readonly boardFeet: BoardFeet;
}

/**
 * Counts a tally of boards under one convention and gathers its lines by name, in the order in which the names first
 * come; large and small letters make no difference.
 *
 * @throws InvalidInput when a measure is not above 0
 */
export function boardTally(
  lines: readonly (BoardLine & { readonly name: string })[],
  measure: TallyMeasure,
): readonly TallyPart[] {
  const count = measure.counter();
  const parts = new Map<string, TallyPart>();
  for (const line of lines) {
    const key = line.name.toLowerCase();
    const before = parts.get(key) ?? { name: line.name, pieces: 0, boardFeet: 0 };
    parts.set(key, {
      name: before.name,
      pieces: before.pieces + line.pieces,
      boardFeet: boardFeet(before.boardFeet + count(line)),
    });
  }
  return [...parts.values()];
}
