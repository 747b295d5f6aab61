import { OutOfRange } from "../../basis/problem";
import { told } from "../../basis/telling";
import { bestStack } from "../bestStack";
import { candidates } from "../candidates";
import { toTheBark } from "../sides";
import { sawThrough } from "../cutList";
import { onBark } from "../setting";
import { goalOf, planOf, type SawingPattern } from "../sawingPattern";
import { centred, stacked } from "../stack";
import { widestFace } from "../widestCut";

/**
 * Live sawing, through and through: all cuts parallel, the log turned over once near the middle [1].
 *
 * The boards follow one another a kerf apart, thicknesses in any order. The plan is the best over all opening
 * positions, exactly; an extra skim cut between boards would gain nothing, see stack.ts.
 *
 * @throws OutOfRange when no listed board fits the log, none that fits is thick enough to be the last on the bed, or
 *   the mill cannot cut through the middle of the log
 *
 * [1] M. Campu & R. A. Derczeni, Forests 14: 1137, 2023 (abstract): a small band saw, to half the log, turned, finished
 */
export const live: SawingPattern = {
  id: "live",
  title: "Live",
  aliases: ["Live sawing", "Through and through"],
  sources: [
    {
      author: "Woodlot Reckoner",
      year: "2026",
      title: "Best stack of parallel boards in a truncated cone, by dynamic programming over exact positions",
      where: "core/sawing/filling/fill; held against independent enumerations in test/core/sawing",
      standing: "computed",
    },
    {
      author: "M. Campu, R. A. Derczeni",
      year: "2023",
      title: "Forests 14: 1137",
      where: "abstract: sawn to about half the diameter, turned over, finished",
      standing: "read",
    },
  ],

  plan(job) {
    const { lying, widestCut, bladeAboveBed, groups, roomFor } = job;
    const widest = widestFace(lying, "top");
    if (widest > widestCut) {
      throw new OutOfRange(
        (telling) =>
          `Live sawing cuts through the middle of the log, ${told(telling, widest, "in")} wide, and your widest ` +
          `cut is ${told(telling, widestCut, "in")}.`,
      );
    }
    if (candidates(roomFor, groups, "top").length === 0) throw new OutOfRange("No board in your list fits this log.");
    const best = bestStack(groups, "top", toTheBark, roomFor, job, job);
    if (!best?.top) {
      throw new OutOfRange(
        (telling) =>
          `The last board stays on the bed, and your blade stops ${told(telling, bladeAboveBed, "in")} above it. ` +
          "No board in your list that fits this log is so thick.",
      );
    }
    const cuts = sawThrough(
      centred(stacked(best, job), job),
      { turn: "none", face: "top", sides: toTheBark, ...onBark(lying, "top") },
      job,
      job,
    );
    return planOf(job, "Live", cuts, `No other set of parallel cuts gives ${goalOf(job)} from these board sizes.`);
  },
};
