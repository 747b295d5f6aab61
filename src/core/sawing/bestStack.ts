import { inches, type Inches } from "../basis/units";
import { HAIR, type Candidate } from "./candidates";

/** A piece at its place in the log. */
export interface Placed extends Candidate {
  /** Its lower face above the pith line, negative below it. [in] */
  readonly lower: Inches;
}

/** The best known way to fill the log up to a height. */
interface Way {
  /** Lowest place where the next board's lower face may lie. [in] */
  readonly free: number;
  readonly worth: number;
  readonly boards: number;
  /** The topmost board and its lower face; none in the empty log. */
  readonly top?: Candidate;
  readonly lower: number;
  readonly below?: Way;
}

/**
 * The stack of parallel boards, one kerf between neighbours, that is worth most of all stacks at all heights in the
 * log; among equals, one of the fewest boards. From the lowest board to the highest.
 *
 * Exact, without a grid. A board may lie anywhere within its reach h of the pith, so in any stack each board can be
 * slid down until it meets the end of its reach (-h) or the kerf of the board below. Only such places need be tried:
 * from a height where the log is free, each candidate starts there or at its own -h. Of two ways to fill the log, the
 * one that stands no higher and is worth no less can replace the other, so only the ways not so beaten are carried on.
 *
 * Sliding down can leave gaps wider than the kerf, but only under a board that starts at its -h, hence under the pith.
 * All boards below it may then be slid up again, towards the pith, where their reach allows them: the gaps close.
 * So an extra skim cut between boards never gains anything, and the stack is sawn in one run of settings.
 *
 * What play the whole stack then has is halved, so that a small error of setting costs no board.
 *
 * @param groups candidates by thickness, each from the narrowest reach to the widest
 * @param thickOne least thickness that one board at least must have, so that it can be the last on the bed [in]
 * @returns an empty stack when none can be made
 */
export function bestStack(
  groups: readonly (readonly Candidate[])[],
  kerf: Inches,
  thickOne: Inches,
): readonly Placed[] {
  const without: Way[] = [{ free: -Infinity, worth: 0, boards: 0, lower: -Infinity }];
  const withOne: Way[] = [];
  // A list grows while it is walked; a way that has a thick board keeps it, so the first list feeds the second only.
  for (const ways of [without, withOne]) {
    for (let i = 0; i < ways.length; i += 1) {
      for (const group of groups) {
        const thickness = group[0]?.piece.thickness ?? 0;
        extend(thickness >= thickOne ? withOne : ways, ways[i] as Way, group, kerf);
      }
    }
  }
  return centred(closed(boardsOf(withOne.at(-1)), kerf));
}

function extend(ways: Way[], way: Way, group: readonly Candidate[], kerf: number): void {
  for (const candidate of group) {
    const { thickness } = candidate.piece;
    const lower = Math.max(way.free, 0 - candidate.reach);
    if (lower + thickness > candidate.reach + HAIR) continue;
    keep(ways, {
      free: lower + thickness + kerf,
      worth: way.worth + candidate.worth,
      boards: way.boards + 1,
      top: candidate,
      lower,
      below: way,
    });
    // The rest of the group reaches farther out and is worth less: at this same height it can only lose.
    if (lower === way.free) return;
  }
}

/** Keeps the ways sorted by height, each worth more than every lower one. */
function keep(ways: Way[], way: Way): void {
  let low = 0;
  let high = ways.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ways[middle] as Way).free <= way.free + HAIR) low = middle + 1;
    else high = middle;
  }
  const lower = ways[low - 1];
  if (lower && asGood(lower, way)) return;
  let end = low;
  while (end < ways.length && asGood(way, ways[end] as Way)) end += 1;
  ways.splice(low, end - low, way);
}

function asGood(one: Way, other: Way): boolean {
  const more = one.worth - other.worth;
  const rounding = HAIR * Math.max(1, one.worth);
  return more > rounding || (more >= -rounding && one.boards <= other.boards);
}

function boardsOf(way: Way | undefined): Placed[] {
  const boards: Placed[] = [];
  for (let one = way; one?.top; one = one.below) boards.push({ ...one.top, lower: inches(one.lower) });
  return boards.reverse();
}

/** Slides the lower boards up until every gap is one kerf. */
function closed(boards: readonly Placed[], kerf: number): Placed[] {
  let above: Placed | undefined;
  const stacked = [...boards].reverse().map((board) => {
    above = above ? { ...board, lower: inches(above.lower - kerf - board.piece.thickness) } : board;
    return above;
  });
  return stacked.reverse();
}

function centred(boards: readonly Placed[]): readonly Placed[] {
  const down = Math.max(...boards.map(({ reach, lower }) => 0 - reach - lower));
  const up = Math.min(...boards.map(({ reach, lower, piece }) => reach - piece.thickness - lower));
  return boards.map((board) => ({ ...board, lower: inches(board.lower + (down + up) / 2) }));
}
