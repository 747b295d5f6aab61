import { boardFeet, inchesPerFoot } from "../../basis/units";
import { eighthInchSections, eighthInchWorking } from "../eighthInchSections";
import type { LogRule } from "../logRule";
import { toNearest } from "../toNearest";

/**
 * International 1/8-inch log rule, the form of 1906 from which the 1/4-inch rule was taken.
 *
 *     V = sum over 4-ft sections of (0.22 T^2 - 0.71 T)
 *
 *     V  lumber tally                              [bf]
 *     T  diameter inside bark at the section's top [in], 1/2 in more for each section below the first
 *
 * Valid from about 3.23 in up. What a length that 4 does not divide gives is told with eighthInchSections.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no printed table of it was found;
 * the worked answers in [1] are not rounded.
 *
 * @throws InvalidInput when diameter or length is not a number above 0
 * @throws OutOfRange when the topmost section would hold less than nothing
 */
export const internationalEighth: LogRule = {
  id: "internationalEighth",
  title: "International 1/8",
  aliases: ["International ⅛"],
  taper: inchesPerFoot(1 / 8), // 1/2 in per 4 ft [1]
  sources: [
    {
      author: "D. R. Larsen, after J. F. Clark 1906",
      year: "n.d.",
      title: "Board-foot log volume, teaching page of the University of Missouri",
      where: "[1] formulas for 4 to 20 ft; the page is headed 1/4 inch but prints the 1/8-inch rule",
      url: "http://oak.snr.missouri.edu/forestry_functions/int14bfvolume.php",
      standing: "read",
    },
    {
      author: "State of Michigan",
      year: "1941",
      title: "Michigan Compiled Laws",
      where: "290.401: the same sections, before the factor 0.904762 for the wider kerf",
      url: "https://law.uslawyerdatabase.com/us-law/2022-michigan-compiled-laws/chapter-290-weights-measures-and-standards/act-208-of-1941-standard-log-rule-290-401-290-401",
      standing: "read",
    },
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the rule is read here",
      where:
        "a rest shorter than 4 ft counts as that share of a section at its own top diameter; nothing below 3.23 in",
      standing: "choice of ours",
    },
  ],

  scale: (log) => boardFeet(eighthInchSections(internationalEighth, log)),

  working: eighthInchWorking,

  round: (volume) => toNearest(1, volume),
};
