import { OutOfRange } from "../../basis/problem";
import { shown } from "../../basis/require";
import { told } from "../../basis/telling";
import { inches } from "../../basis/units";
import { fitThroat } from "../bestStack";
import { bestQuarter, type Peel } from "../bestQuarter";
import { onBark, type Cut } from "../cutList";
import { asFirstLaid, outline, type Face, type Outline } from "../outline";
import { goalOf, planOf, type SawingPattern, type SawJob } from "../sawingPattern";
import { laid } from "../sawnFlitch";

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
      where: "core/sawing/bestQuarter; held against independent enumerations in test/core/sawing",
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
    const { log, lying, kerf, widestCut } = job;
    if (!lying.isPlain) {
      throw new OutOfRange(
        "Quarter sawing is planned for round, straight logs on split taper only. Give the smaller diameter of each end, " +
          "less the sweep.",
      );
    }
    if (log.largeEnd > widestCut) {
      throw new OutOfRange(
        (telling) =>
          `Quartering splits the log through its middle, ${told(telling, log.largeEnd, "in")} wide, and your widest ` +
          `cut is ${told(telling, widestCut, "in")}.`,
      );
    }
    if (job.scaleStep !== undefined) {
      throw new OutOfRange(
        "Quarter sawing is measured from the sawn faces of each quarter, not by the marks of a scale. Leave out the " +
          "scale step to plan it.",
      );
    }
    const step = stepFor(log.largeEnd / 2);
    const groups = fitThroat(job.groups, job.throat);
    const peels = bestQuarter({ groups, bladeAboveBed: job.bladeAboveBed, step }, job);
    if (peels.length === 0) throw new OutOfRange("No board in your list fits a quarter of this log.");
    const guarantee =
      `No other order of boards, on settings of ${shown(step)} in, gives ${goalOf(job)} from the quarters of this log, ` +
      "as long as the rings meet each flitch at 45 degrees or more.";
    return planOf(job, "Quarter", { cuts: [...splits(job, kerf), ...quarters(peels, job)] }, guarantee);
  },
};

function stepFor(radius: number): number {
  let step = FINEST_STEP;
  while (radius / step > MOST_STEPS) step *= 2;
  return step;
}

/** Through the pith, level; then through each half, stood on its edge. */
function splits(job: SawJob, kerf: number): readonly Cut[] {
  const { pithHeight, smallEndRaised } = onBark(job.lying, "top");
  const split = {
    smallEndRaised: inches(smallEndRaised),
    headReading: inches(pithHeight - kerf / 2),
  };
  const half = kerf / 2;
  return [
    {
      ...split,
      turn: "none",
      frees: "half",
      kerfIn: outline(-Infinity, Infinity, 0 - half, half),
    },
    {
      ...split,
      turn: "quarter turn",
      frees: "quarter",
      kerfIn: outline(0 - half, half, half, Infinity),
    },
    {
      ...split,
      turn: "next half",
      frees: "quarter",
      kerfIn: outline(0 - half, half, -Infinity, 0 - half),
    },
  ];
}

/** The four quarters are sawn alike. */
function quarters(peels: readonly Peel[], job: SawJob): readonly Cut[] {
  const faces: readonly Face[] = ["top", "right", "bottom", "left"];
  return faces.flatMap((face) =>
    peels.map((peel, i): Cut => {
      const before = peels[i - 1];
      const turn = !before ? "next quarter" : before.flat === peel.flat ? "none" : "quarter turn";
      return { ...peeled(peel, face, job), turn };
    }),
  );
}

/**
 * One cut: the sawn face it comes off looks up and lies level, the bark lies on the bed. What stays below the blade
 * reaches from the cut to the bark at its farthest, next to the other sawn face:
 *
 *     z = sqrt(Db^2 / 4 - p^2) - a - (t + k)
 *
 *     a, p  distance of this face and of the other one from the pith  [in]
 */
function peeled({ flitch, flat, across, up }: Peel, quarterAt: Face, job: SawJob): Omit<Cut, "turn"> {
  const { log, kerf } = job;
  const [face, other] = flat ? [up, across] : [across, up];
  const bark = (diameter: number) => Math.sqrt(Math.max(0, (diameter / 2) ** 2 - other ** 2));
  const { thickness, width } = flitch;
  const start = Math.max(other, face + thickness / 2 - width / 2);
  const place = (one: Outline) => asFirstLaid(flat ? one : mirrored(one), quarterAt);
  const lying = laid(flitch, "top", start, face, { left: other, right: Infinity }, job);
  return {
    smallEndRaised: inches(bark(log.largeEnd) - bark(log.smallEnd)),
    headReading: inches(bark(log.largeEnd) - face - thickness - kerf),
    frees: {
      ...lying,
      outline: place(lying.outline),
      boards: lying.boards.map((one) => ({
        ...one,
        outline: place(one.outline),
      })),
    },
    kerfIn: place(outline(other, Infinity, face + thickness, face + thickness + kerf)),
  };
}

/** Across and up exchanged. */
const mirrored = ({ left, right, lower, upper }: Outline) => outline(lower, upper, left, right);
