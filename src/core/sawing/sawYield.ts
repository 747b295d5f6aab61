import { boardFeet, dollars, percent, type BoardFeet, type Dollars, type Percent } from "../basis/units";
import { sawnBoardFeet } from "./boardSize";
import type { SawnBoard } from "./sawnFlitch";
import type { SawPlan } from "./sawingPattern";
import { solidVolume } from "./sawLog";
import { woodIn } from "./woodIn";

/**
 * What a plan gets out of a log. The three shares are of the log's solid wood, each is 0 or more, and they add to 100.
 *
 * Where wane may show, a board is tallied whole, as it is sold: its board feet and its value are those of its full
 * width, thickness and length. The share of lumber counts the wood that is really in it,
 *
 *     lumber = sum over boards of B v / (w t l),  as a share of the log
 *
 *     B        board feet of the board as tallied                             [bf]
 *     v        wood of the log inside the board, see woodIn.ts; w t l where it has no wane
 *     w, t, l  its width, thickness and length as sawn
 *
 * so that the corners that the log does not have count in no share.
 */
export interface SawYield {
  readonly pieces: number;
  readonly boardFeet: BoardFeet;
  /** Left out when the boards have no prices. */
  readonly value?: Dollars;
  /** Wood of the log in boards, without what wane leaves out of them. */
  readonly lumber: Percent;
  /** Kerf of the cuts through the log, as far as it runs in wood. */
  readonly sawdust: Percent;
  /** Slabs, edgings with the edger's sawdust, and the ends trimmed off short boards. */
  readonly slab: Percent;
}

const BOARD_FEET_PER_CUBIC_FOOT = 12;

export function sawYield(plan: SawPlan): SawYield {
  const { log, lying, cuts, flitches, priced, worth } = plan;
  const boards = flitches.flatMap((one) => one.boards);
  const tally = boards.reduce((sum, { piece }) => sum + sawnBoardFeet(piece), 0);
  const solid = boards.reduce((sum, board) => sum + sawnBoardFeet(board.piece) * shareOfWood(board, plan), 0);
  const wood = solidVolume(log);
  const lumber = (100 * solid) / BOARD_FEET_PER_CUBIC_FOOT / wood;
  const sawdust = (100 * cuts.reduce((sum, { kerfIn }) => sum + woodIn(lying, kerfIn), 0)) / wood;
  return {
    pieces: boards.length,
    boardFeet: boardFeet(tally),
    ...(priced && { value: dollars(worth) }),
    lumber: percent(lumber),
    sawdust: percent(sawdust),
    slab: percent(100 - lumber - sawdust),
  };
}

/** How much of a board is wood: all of it unless wane may show. */
function shareOfWood({ piece, outline }: SawnBoard, { lying, wane }: SawPlan): number {
  if (wane === 0) return 1;
  const area = (outline.right - outline.left) * (outline.upper - outline.lower);
  return (woodIn(lying, outline, piece.length) * 144) / (area * piece.length);
}
