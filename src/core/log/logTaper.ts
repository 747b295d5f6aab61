import { InvalidInput } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
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
 * @throws InvalidInput when a measure is not above 0, or the large end is the thinner one
 */
export function logTaper(smallEnd: Inches, largeEnd: Inches, length: Feet): InchesPerFoot {
  requirePositive("Small end", smallEnd, "in");
  requirePositive("Large end", largeEnd, "in");
  requirePositive("Length", length, "ft");
  if (largeEnd < smallEnd) {
    throw new InvalidInput((telling) => {
      const [small, large] = [smallEnd, largeEnd].map((one) => told(telling, one, "in"));
      return `Large end should be at least as thick as the small end, ${small}. You have ${large}. Ends swapped?`;
    });
  }
  return inchesPerFoot((largeEnd - smallEnd) / length);
}
