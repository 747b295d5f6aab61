import { InvalidInput, OutOfRange } from "../basis/problem";
import { requireNotNegative, requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";

export const scalingLengthSources: readonly Source[] = [
  {
    author: "USDA",
    year: "n.d.",
    title: "Bulletin 711",
    where: "excerpt: trim of 2 to 9 in beyond the board length is not scaled",
    url: "https://www.bookdepository.com/Bulletin-U-S-Department-Agriculture-701-711-United-States-Dept-Agriculture/9781236904065",
    standing: "read",
  },
  {
    author: "Idaho forestry contest",
    year: "n.d.",
    title: "Log scaling practicum",
    where: "lengths in 2-ft classes with at least 4 in of trim",
    url: "https://sites.google.com/minidokaschools.org/minicoforestrycde/practicums/log-scaling",
    standing: "read",
  },
  {
    author: "The trade",
    year: "",
    title: "Scaling practice",
    where: "lengths fall back to the next lower whole or even foot",
    standing: "common practice",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Feet and inches in two decimals",
    where: "a log short by up to a hundredth is not dropped: 16 ft 4 in may be typed as 16.33",
    standing: "choice of ours",
  },
];

const SLIP = 0.01; // of a foot or a metre: what two decimals may hide; a choice of ours
const BEYOND_ANY_LOG = 1000;

/**
 * Length that is scaled: the measured length less trim, dropped to the next lower step.
 *
 *     S = s * floor((L - t) / s)
 *
 *     S  scaling length
 *     L  measured length
 *     t  trim that the buyer asks for
 *     s  step in which lengths are scaled
 *
 * All in one unit, feet or metres.
 *
 * @param unit its name, for the sentences
 * @throws InvalidInput when L or s is not above 0, or t is below 0
 * @throws OutOfRange when no whole step is left
 */
export function scalingLength(length: number, trim: number, step: number, unit = "ft"): number {
  requirePositive("Length", length, unit);
  requireNotNegative("Trim", trim, unit);
  requirePositive("Step", step, unit);
  if (length > BEYOND_ANY_LOG)
    throw new InvalidInput(`Length should be at most ${BEYOND_ANY_LOG} ${unit}. You have ${shown(length)}.`);
  const steps = Math.floor((length - trim + SLIP) / step);
  if (steps >= 1) return Number((steps * step).toFixed(9));
  throw new OutOfRange(
    `A log of ${shown(length)} ${unit} has no whole step of ${shown(step)} ${unit} beyond its trim of ${shown(trim)} ${unit}.`,
  );
}
