import { OutOfRange } from "../../basis/problem";
import { told } from "../../basis/telling";
import { thickestOf } from "../sawLog";
import { widestFace } from "../widestCut";
import { fitThroat } from "../stackOnBed";
import { bestQuarter, type Peel } from "../quarters/bestQuarter";
import { quarterCuts, splits } from "../quarters/quarterCuts";
import { fanned } from "../quarters/fannedLog";
import { fourQuarters, type Quarter } from "../quarters/fourQuarters";
import { mayPayToSkip } from "../quarters/peelChoices";
import { goalOf, planOf, type SawingPattern, type SawJob } from "../sawingPattern";

/** Finest step of the settings where there is no scale, and how many steps may lie between pith and bark (choices of ours). [in] */
const FINEST_STEP = 1 / 32;
const MOST_STEPS = 512;
/** Where every one of them is tried: of a log that is swept or sawn along its bark. */
const MOST_STEPS_WITH_SKIPS = 192;

/**
 * Quarter sawing: the log is split through the pith into halves and quarters, and each quarter is sawn from its two
 * sawn faces in turn, so that the rings meet the faces of the boards at a wide angle. On full taper each quarter lies on
 * its own bark and is sawn parallel to it; the taper goes into a wedge next to the pith.
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

  plan(order) {
    const { log, widestCut, scaleStep } = order;
    const alongBark = order.lying.taper.id === "full" && log.largeEnd > log.smallEnd;
    const lying = alongBark ? fanned(order.lying, order.kerf) : order.lying;
    const job = { ...order, lying };
    const widest = widestFace(lying, "top");
    if (widest > widestCut) {
      throw new OutOfRange(
        (telling) =>
          `Quartering splits the log through its middle, ${told(telling, widest, "in")} wide, and your widest ` +
          `cut is ${told(telling, widestCut, "in")}.`,
      );
    }
    const step = stepFor(thickestOf(log) / 2, mayPayToSkip(lying) ? MOST_STEPS_WITH_SKIPS : MOST_STEPS, scaleStep);
    const groups = fitThroat(job.groups, job.throat);
    const peelsOf = alike(job, (one) => bestQuarter(one, { groups, bladeAboveBed: job.bladeAboveBed, step }, job));
    const cuts = fourQuarters.flatMap((one) => quarterCuts(one, peelsOf(one), job));
    if (cuts.length === 0) throw new OutOfRange("No board in your list fits a quarter of this log.");
    const guarantee = `No other order of boards gives ${goalOf(job)} from these quarters, the rings at 45 degrees or more to each flitch.`;
    return planOf(job, "Quarter", { cuts: [...splits(job), ...cuts] }, guarantee, step);
  },
};

/** Quarters that look alike are sawn alike: all four of a straight log, of a swept one those that it bends the same way. */
function alike({ log, lying }: SawJob, peelsOf: (one: Quarter) => readonly Peel[]): typeof peelsOf {
  const known = new Map<boolean, readonly Peel[]>();
  return (one) => {
    const kind = (log.sweep ?? 0) > 0 && (lying.upright ? one.isUpper : one.isRight);
    const peels = known.get(kind) ?? peelsOf(one);
    known.set(kind, peels);
    return peels;
  };
}

/** The step of the scale or the finest one, doubled until there are not too many of them. */
function stepFor(radius: number, mostSteps: number, scaleStep = FINEST_STEP): number {
  let step = scaleStep;
  while (radius / step > mostSteps) step *= 2;
  return step;
}
