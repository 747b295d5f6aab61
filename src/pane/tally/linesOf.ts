import { samePlot, treesOn, type Job, type SavedTree } from "../job/job";
import type { TallyState } from "../paneState";
import { writeTallyLine } from "./writeTallyLine";

/**
 * Lines of the point that are in the workbook, the last one first, without those that are being changed or removed
 * just now. Of lines that read the same, one goes for each change.
 */
export function linesOf(job: Job, { plot, pending, removing }: TallyState): readonly SavedTree[] {
  const going = [
    ...pending.flatMap((one) => (one.replaces && samePlot(one.plot, plot) ? [writeTallyLine(one.replaces)] : [])),
    ...removing.filter((one) => samePlot(one.plot, plot)).map(({ tree }) => writeTallyLine(tree)),
  ];
  return [...treesOn(job, plot)].reverse().filter(({ tree }) => {
    const place = going.indexOf(writeTallyLine(tree));
    if (place < 0) return true;
    going.splice(place, 1);
    return false;
  });
}
