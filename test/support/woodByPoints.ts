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
 * it. Knows of the plan no more than its rectangles and the lengths of its boards; and of quarters that lie on their own
 * bark, that they are seen moved outwards by as much as the log is thinner there than at its large end.
 */
export function woodByPoints(plan: SawPlan, points = POINTS): WoodByPoints {
  const { log, cuts, flitches } = plan;
  const boards = flitches.flatMap((one) => one.boards);
  const isSplit = plan.lying.splitKerf !== undefined;
  const splits = cuts
    .filter(({ frees }) => isSplit && (frees === "half" || frees === "quarter"))
    .map((cut) => cut.kerfIn);
  const kerfs = cuts.map(({ kerfIn }) => kerfIn).filter((kerf) => !splits.includes(kerf));
  const { largeEnd, smallEnd, largeEndAcross = largeEnd, smallEndAcross = smallEnd } = log;
  const isIn = ({ left, right, lower, upper }: Outline, u: number, v: number) =>
    u > left && u < right && v > lower && v < upper;
  let [all, lumber, sawdust, twice] = [0, 0, 0, 0];
  for (let i = 0; i < points; i += 1) {
    const [share, inward, around] = [1, 2, 3].map((power) => (0.5 + i / EVEN ** power) % 1) as [number, number, number];
    const first = (largeEnd + (smallEnd - largeEnd) * share) / 2;
    const second = (largeEndAcross + (smallEndAcross - largeEndAcross) * share) / 2;
    const [across, up] = plan.lying.upright ? [second, first] : [first, second];
    const u = across * Math.sqrt(inward) * Math.cos(2 * Math.PI * around);
    const v = up * Math.sqrt(inward) * Math.sin(2 * Math.PI * around);
    const wood = across * up; // every section has as many points, so that one stands for more wood where it is larger
    const inSplits = splits.filter((kerf) => isIn(kerf, u, v)).length;
    const ends = plan.lying.upright ? [largeEndAcross, largeEnd] : [largeEnd, largeEndAcross];
    const [seenU, seenV] = isSplit
      ? [u + Math.sign(u) * ((ends[0] as number) / 2 - across), v + Math.sign(v) * ((ends[1] as number) / 2 - up)]
      : [u, v];
    const isThere = (one: Outline) => inSplits === 0 && isIn(one, seenU, seenV);
    const inBoards = boards.filter(
      ({ piece, outline }) => piece.length >= share * log.length && isThere(outline),
    ).length;
    const inKerfs = inSplits + kerfs.filter(isThere).length;
    all += wood;
    if (inBoards > 0) lumber += wood;
    else if (inKerfs > 0) sawdust += wood;
    if (inBoards + inKerfs > 1) twice += 1;
  }
  const percent = (amount: number) => (100 * amount) / all;
  return { lumber: percent(lumber), sawdust: percent(sawdust), rest: percent(all - lumber - sawdust), twice };
}
