import { sawnBoardFeet } from "./boardSize";
import { grainOf, GRAINS, type Grain } from "./grain";
import type { SawPlan } from "./sawingPattern";

/** How many boards of a plan have each grain, and their board feet. */
export interface GrainCount {
  readonly grain: Grain;
  readonly boards: number;
  readonly boardFeet: number;
}

export function grainCounts({ flitches, lying }: Pick<SawPlan, "flitches" | "lying">): readonly GrainCount[] {
  const boards = flitches.flatMap((flitch) => flitch.boards);
  return GRAINS.map((grain) => {
    const ofGrain = boards.filter((board) => grainOf(board, lying) === grain);
    return {
      grain,
      boards: ofGrain.length,
      boardFeet: ofGrain.reduce((sum, { piece }) => sum + sawnBoardFeet(piece), 0),
    };
  });
}
