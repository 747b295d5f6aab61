import { InvalidInput } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { feet, inches, type Feet, type InchesPerFoot } from "../basis/units";
import type { ScaledLog } from "./logRule";
import { requireLog } from "./requireLog";

export const segmentsSources: readonly Source[] = [
  {
    author: "State of Georgia",
    year: "n.d.",
    title: "Official Code of Georgia Annotated",
    where: "[1] 2-14-80: long logs count as two or more, as equal as possible in even feet",
    url: "http://www.lawskills.com/code/ga/2/14/80/",
    standing: "read",
  },
  {
    author: "USDA Forest Service, Alaska Region",
    year: "n.d.",
    title: "Supplement to FSH 2409.11",
    where: "[2] longest scaling length 20 ft by the east-side rule, 40 ft by the west-side rule",
    url: "https://paperzz.com/doc/6900578/2409.11_10---usda-forest-service",
    standing: "read",
  },
  {
    author: "The trade",
    year: "",
    title: "Scaling practice",
    where: "[3] of unequal segments the longer one lies at the butt",
    standing: "from memory",
  },
];

const EVEN = 2; // ft, the step in which pieces are laid off
const NO_TAPER = 0 as InchesPerFoot;

/**
 * The pieces in which a log longer than the longest scaling length is scaled, from the small end to the butt.
 *
 * There are as few pieces as the longest scaling length [2] allows, as equal as even feet allow [1], the longer ones
 * towards the butt [3]; none exceeds the longest even length allowed. What the log lacks of even feet is taken off
 * the uppermost of the longest pieces. The top of each piece is as thick as taper makes it at that place:
 *
 *     D_k = D + taper * (feet of log above the piece)
 *
 * Only the small end is known of a scaled log, so the taper is the one that the log's rule builds in, and a rule that
 * takes a log for a cylinder scales every piece at the small end. That is the careful reading: no wood is guessed.
 *
 * @param longest longest length scaled as one piece, 2 ft or more [ft]
 * @param taper   growth of the diameter towards the butt          [in/ft]
 * @throws InvalidInput when a measure is not above 0, or the longest scaling length is below 2 ft
 */
export function segments(log: ScaledLog, longest: Feet, taper = NO_TAPER): readonly ScaledLog[] {
  requireLog(log);
  requirePositive("Longest scaling length", longest, "ft");
  if (log.length <= longest) return [log];

  const longestEven = EVEN * Math.floor(longest / EVEN);
  if (longestEven < EVEN) {
    throw new InvalidInput(
      (telling) =>
        `Longest scaling length should be ${told(telling, EVEN, "ft")} or more. You have ${telling.number(longest, "ft")}.`,
    );
  }

  const pieces = Math.ceil(log.length / longestEven);
  const steps = Math.ceil(log.length / EVEN);
  const shorter = EVEN * Math.floor(steps / pieces);
  const longer = EVEN * Math.ceil(steps / pieces);
  const firstOfLongest = longer === shorter ? 0 : pieces - (steps % pieces);
  const shortOfEven = EVEN * steps - log.length;

  const laidOff: ScaledLog[] = [];
  let above = 0;
  for (let k = 0; k < pieces; k += 1) {
    const even = k < firstOfLongest ? shorter : longer;
    const length = k === firstOfLongest ? even - shortOfEven : even;
    laidOff.push({ diameter: inches(log.diameter + taper * above), length: feet(length) });
    above += length;
  }
  return laidOff;
}
