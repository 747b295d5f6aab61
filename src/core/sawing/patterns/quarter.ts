import { OutOfRange } from "../../basis/problem";
import { shown } from "../../basis/require";
import { told } from "../../basis/telling";
import { thickestOf } from "../sawLog";
import { widestFace } from "../widestCut";
import { fitThroat } from "../bestStack";
import { bestQuarter } from "../quarters/bestQuarter";
import { quarters, splits } from "../quarters/quarterCuts";
import { goalOf, planOf, type SawingPattern } from "../sawingPattern";

/** Finest step of the settings, and how many steps may lie between pith and bark (choices of ours). [in] */
const FINEST_STEP = 1 / 32;
const MOST_STEPS = 512;

/**
 * Quarter sawing: the log is split through the pith into halves and quarters, and each quarter is sawn from its two
 * sawn faces in turn, so that the rings meet the faces of the boards at a wide angle.
 *
 * @throws OutOfRange when no listed board fits a quarter of the log, or the mill cannot split it
 */
export const quarter: SawingPattern = {
  id: "quarter",
  title: "Quarter",
  aliases: ["Quarter sawing", "Quartersawn", "Quarter sawn"],
  sources: [
    {
      author: "Woodlot Reckoner",
      year: "2026",
      title: "Best order of boards from the two faces of a quarter log, by dynamic programming on settings of 1/32 in",
      where: "core/sawing/quarters/bestQuarter; held against independent enumerations in test/core/sawing",
      standing: "computed",
    },
    {
      author: "The trade",
      year: "",
      title: "Quarter sawing",
      where: "rings at 60 to 90 degrees to the face are quarter sawn, 30 to 60 rift; limits differ by source",
      standing: "from memory",
    },
  ],

  plan(job) {
    const { log, lying, widestCut } = job;
    if ((log.sweep ?? 0) > 0) {
      throw new OutOfRange(
        "Quarter sawing splits the log along its pith, so it is planned for straight logs only. Leave out the sweep and " +
          "take it off the diameters.",
      );
    }
    if (lying.taper.id === "full" && log.largeEnd > log.smallEnd) {
      throw new OutOfRange("Quarter sawing splits the log along its pith, so it is planned on split taper only.");
    }
    const widest = widestFace(lying, "top");
    if (widest > widestCut) {
      throw new OutOfRange(
        (telling) =>
          `Quartering splits the log through its middle, ${told(telling, widest, "in")} wide, and your widest ` +
          `cut is ${told(telling, widestCut, "in")}.`,
      );
    }
    if (job.scaleStep !== undefined) {
      throw new OutOfRange(
        "Quarter sawing is measured from the sawn faces of each quarter, not by the marks of a scale. Leave out the " +
          "scale step to plan it.",
      );
    }
    const step = stepFor(thickestOf(log) / 2);
    const groups = fitThroat(job.groups, job.throat);
    const peels = bestQuarter({ groups, bladeAboveBed: job.bladeAboveBed, step }, job);
    if (peels.length === 0) throw new OutOfRange("No board in your list fits a quarter of this log.");
    const guarantee =
      `No other order of boards, on settings of ${shown(step)} in, gives ${goalOf(job)} from the quarters of this log, ` +
      "as long as the rings meet each flitch at 45 degrees or more.";
    return planOf(job, "Quarter", { cuts: [...splits(job), ...quarters(peels, job)] }, guarantee);
  },
};

function stepFor(radius: number): number {
  let step = FINEST_STEP;
  while (radius / step > MOST_STEPS) step *= 2;
  return step;
}
