import { inches, type Feet, type Inches } from "../basis/units";
import { sawnBoardFeet, type BoardPiece, type BoardSize } from "./boardSize";
import { diameterAt, type SawLog } from "./sawLog";

/** A piece that a log can give, and how far from the pith it may lie. */
export interface Candidate {
  readonly piece: BoardPiece;
  /** Both faces must keep within this distance of the pith, or wane shows. [in] */
  readonly reach: Inches;
  /** What the plan adds up: dollars when the boards are priced, else board feet. */
  readonly worth: number;
}

/** Which lengths are kept when a board does not run the whole log. */
export interface BoardLengths {
  /** [ft] */
  readonly shortest: Feet;
  /** Steps between lengths, counted from the shortest. [ft] */
  readonly step: Feet;
}

/** Lets a plan survive the rounding of square roots; far below what any mill can set. [in] */
export const HAIR = 1e-9;

/**
 * Every piece of the listed sizes that lies somewhere in the log, at each length from the shortest up, and at the
 * log's full length. Shorter ones are trimmed from the small end, where taper leaves wane first, so a piece of
 * length l sees the log's diameter at l from the large end:
 *
 *     reach(w, l) = sqrt(D(l)^2 / 4 - w^2 / 4)
 *
 * A piece is left out when another of its thickness is worth as much and may lie as far out: it can never be missed.
 * Grouped by thickness; within a group, from the narrowest reach (worth most) to the widest.
 */
export function candidates(
  log: SawLog,
  sizes: readonly BoardSize[],
  lengths: BoardLengths,
  priced: boolean,
): readonly (readonly Candidate[])[] {
  const groups = new Map<number, Candidate[]>();
  for (const size of sizes) {
    for (const length of lengthsOf(log, lengths)) {
      const reachSquared = diameterAt(log, length) ** 2 / 4 - size.width ** 2 / 4;
      if (reachSquared < 0) continue;
      const reach = inches(Math.sqrt(reachSquared));
      if (2 * reach + HAIR < size.thickness) continue;
      const piece = { ...size, length };
      const volume = sawnBoardFeet(piece);
      const worth = priced ? (volume * (size.price ?? 0)) / 1000 : volume;
      groups.set(size.thickness, [...(groups.get(size.thickness) ?? []), { piece, reach, worth }]);
    }
  }
  return [...groups.entries()].sort(([a], [b]) => a - b).map(([, group]) => undominated(group));
}

function lengthsOf({ length }: SawLog, { shortest, step }: BoardLengths): readonly Feet[] {
  const shorter: Feet[] = [];
  for (let i = 0; shortest + i * step < length - HAIR; i += 1) shorter.push((shortest + i * step) as Feet);
  return [...shorter, length];
}

function undominated(group: readonly Candidate[]): readonly Candidate[] {
  const fromWidest = [...group].sort(
    (a, b) =>
      b.reach - a.reach || b.worth - a.worth || b.piece.length - a.piece.length || a.piece.width - b.piece.width,
  );
  const kept: Candidate[] = [];
  for (const candidate of fromWidest) {
    const most = kept.at(-1)?.worth ?? 0;
    if (candidate.worth > most) kept.push(candidate);
  }
  return kept.reverse();
}
