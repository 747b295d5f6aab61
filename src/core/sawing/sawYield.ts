import { boardFeet, dollars, percent, type BoardFeet, type Dollars, type Percent } from "../basis/units";
import { sawnBoardFeet } from "./boardSize";
import type { SawPlan } from "./sawingPattern";
import { solidVolume } from "./sawLog";
import { woodIn } from "./woodIn";

/** What a plan gets out of a log. The three shares are of the log's solid wood and add to 100. */
export interface SawYield {
  readonly pieces: number;
  readonly boardFeet: BoardFeet;
  /** Left out when the boards have no prices. */
  readonly value?: Dollars;
  readonly lumber: Percent;
  /** Kerf of the cuts through the log, as far as it runs in wood. */
  readonly sawdust: Percent;
  /** Slabs, edgings with the edger's sawdust, and the ends trimmed off short boards. */
  readonly slab: Percent;
}

const BOARD_FEET_PER_CUBIC_FOOT = 12;

export function sawYield({ log, lying, cuts, flitches, priced, worth }: SawPlan): SawYield {
  const boards = flitches.flatMap((one) => one.boards);
  const tally = boards.reduce((sum, { piece }) => sum + sawnBoardFeet(piece), 0);
  const wood = solidVolume(log);
  const lumber = (100 * tally) / BOARD_FEET_PER_CUBIC_FOOT / wood;
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
