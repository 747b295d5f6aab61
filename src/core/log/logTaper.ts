import { InvalidInput } from "../basis/problem";
import { requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { inchesPerFoot, type Feet, type Inches, type InchesPerFoot } from "../basis/units";

export const logTaperSources: readonly Source[] = [
  {
    author: "Geometry",
    year: "",
    title: "Taper of a log",
    where: "difference of its end diameters over its length",
    standing: "computed",
  },
];

const sayInches = (diameter: Inches) => `${shown(diameter)} in`;

/**
 * How much thicker a log gets towards the butt.
 *
 *     t = (D - d) / L
 *
 *     t  taper                     [in/ft]
 *     d  diameter at the small end [in]
 *     D  diameter at the large end [in]
 *     L  length                    [ft]
 *
 * @param say how a diameter is told in a sentence
 * @throws InvalidInput when a measure is not above 0, or the large end is the thinner one
 */
export function logTaper(smallEnd: Inches, largeEnd: Inches, length: Feet, say = sayInches): InchesPerFoot {
  requirePositive("Small end", smallEnd, "in");
  requirePositive("Large end", largeEnd, "in");
  requirePositive("Length", length, "ft");
  if (largeEnd < smallEnd) {
    throw new InvalidInput(
      `Large end should be at least as thick as the small end, ${say(smallEnd)}. You have ${say(largeEnd)}. Ends swapped?`,
    );
  }
  return inchesPerFoot((largeEnd - smallEnd) / length);
}
