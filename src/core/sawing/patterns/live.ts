import { OutOfRange } from "../../basis/problem";
import { shown } from "../../basis/require";
import { bestStack } from "../bestStack";
import { candidates } from "../candidates";
import { cutList } from "../cutList";
import type { SawingPattern } from "../sawingPattern";

/**
 * Live sawing, through and through: all cuts parallel, the log turned over once near the middle [1].
 *
 * The boards follow one another a kerf apart, thicknesses in any order, planes parallel to the pith (split taper).
 * Each flitch is edged to the one listed width and length that is worth most. The plan is the best over all opening
 * positions, see bestStack; an extra skim cut between boards would gain nothing.
 * Not reckoned with: sweep, out-of-round logs, defects, wane allowed on a board, two boards edged from one flitch.
 *
 * @throws OutOfRange when no listed board fits the log, or none that fits is thick enough to be the last on the bed
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
      where: "core/sawing/bestStack; held against independent enumerations in test/core/sawing",
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

  plan({ log, sizes, priced, kerf, lengths, bladeAboveBed }) {
    const groups = candidates(log, sizes, lengths, priced);
    if (groups.length === 0) throw new OutOfRange("No board in your list fits this log.");
    const boards = bestStack(groups, kerf, bladeAboveBed);
    if (boards.length === 0) {
      throw new OutOfRange(
        `The last board stays on the bed, and your blade stops ${shown(bladeAboveBed)} in above it. ` +
          "No board in your list that fits this log is so thick.",
      );
    }
    return {
      log,
      kerf,
      priced,
      boards,
      ...cutList(log, boards, kerf, bladeAboveBed),
      guarantee: `No other set of parallel cuts gives ${priced ? "more value" : "more board feet"} from these board sizes.`,
    };
  },
};
