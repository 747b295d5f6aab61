import { inches } from "../../basis/units";
import type { Cut } from "../cutList";
import { asFirstLaid, outline, type Face, type Outline } from "../outline";
import { laid } from "../sawnFlitch";
import type { SawJob } from "../sawingPattern";
import { onBark } from "../setting";
import type { Peel } from "./bestQuarter";

/** Through the pith, level; then through each half, stood on its edge. */
export function splits(job: SawJob): readonly Cut[] {
  const half = job.kerf / 2;
  const { pithHeight, smallEndRaised } = onBark(job.lying, "top");
  const split = {
    smallEndRaised: inches(smallEndRaised),
    headReading: inches(pithHeight - half),
  };
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
export function quarters(peels: readonly Peel[], job: SawJob): readonly Cut[] {
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
