import type { Outline } from "../../src/core/sawing/outline";
import type { SawPlan } from "../../src/core/sawing/sawingPattern";

/** Where a log's wood goes, each as a share of all points that were tried in it. [%] */
export interface WoodByPoints {
  readonly lumber: number;
  readonly sawdust: number;
  readonly rest: number;
  /** Points that were found in more than one board or kerf. */
  readonly twice: number;
}

const POINTS = 40_000;
/** x^4 = x + 1: its powers spread points evenly through a block, without rows that a kerf could fall between. */
const EVEN = 1.22074408460575947536;

/**
 * Tries points all through a straight log on split taper, its section an ellipse, and asks of each what a plan makes of
 * it. Knows of the plan no more than its rectangles and the lengths of its boards.
 */
export function woodByPoints(plan: SawPlan): WoodByPoints {
  const { log, cuts, flitches } = plan;
  const boards = flitches.flatMap((one) => one.boards);
  const kerfs = cuts.map(({ kerfIn }) => kerfIn);
  const { largeEnd, smallEnd, largeEndAcross = largeEnd, smallEndAcross = smallEnd } = log;
  const isIn = ({ left, right, lower, upper }: Outline, u: number, v: number) =>
    u > left && u < right && v > lower && v < upper;
  let [all, lumber, sawdust, twice] = [0, 0, 0, 0];
  for (let i = 0; i < POINTS; i += 1) {
    const [share, inward, around] = [1, 2, 3].map((power) => (0.5 + i / EVEN ** power) % 1) as [number, number, number];
    const first = (largeEnd + (smallEnd - largeEnd) * share) / 2;
    const second = (largeEndAcross + (smallEndAcross - largeEndAcross) * share) / 2;
    const [across, up] = plan.lying.upright ? [second, first] : [first, second];
    const u = across * Math.sqrt(inward) * Math.cos(2 * Math.PI * around);
    const v = up * Math.sqrt(inward) * Math.sin(2 * Math.PI * around);
    const wood = across * up; // every section has as many points, so that one stands for more wood where it is larger
    const inBoards = boards.filter(
      ({ piece, outline }) => piece.length >= share * log.length && isIn(outline, u, v),
    ).length;
    const inKerfs = kerfs.filter((kerf) => isIn(kerf, u, v)).length;
    all += wood;
    if (inBoards > 0) lumber += wood;
    else if (inKerfs > 0) sawdust += wood;
    if (inBoards + inKerfs > 1) twice += 1;
  }
  const percent = (amount: number) => (100 * amount) / all;
  return { lumber: percent(lumber), sawdust: percent(sawdust), rest: percent(all - lumber - sawdust), twice };
}
