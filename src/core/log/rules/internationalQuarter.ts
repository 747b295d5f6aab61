import { sum } from "../../basis/step";
import { boardFeet, inchesPerFoot } from "../../basis/units";
import { eighthInchSections, eighthInchWorking } from "../eighthInchSections";
import type { LogRule } from "../logRule";
import { toNearest } from "../toNearest";

const WIDER_KERF = 0.904762; // what a 1/4-in kerf leaves of the lumber of a 1/8-in kerf [1] [2]

/**
 * International 1/4-inch log rule, as two states have it in their statutes.
 *
 *     V = 0.904762 * sum over 4-ft sections of (0.22 T^2 - 0.71 T)
 *
 *     V  lumber tally                              [bf]
 *     T  diameter inside bark at the section's top [in], 1/2 in more for each section below the first
 *
 * Valid from about 3.23 in up. What a length that 4 does not divide gives is told with eighthInchSections.
 * Printed tables show the nearest 5 bf; three of the 126 cells read differ from that by one step, where the figure
 * lies less than a quarter board foot short of the half. No convention of rounding gives all 126 as they are printed.
 *
 * @throws InvalidInput when diameter or length is not a number above 0
 * @throws OutOfRange when the topmost section would hold less than nothing
 */
export const internationalQuarter: LogRule = {
  id: "internationalQuarter",
  title: "International 1/4",
  aliases: ["International", "International ¼"],
  taper: inchesPerFoot(1 / 8), // 1/2 in per 4 ft [1] [2]
  sources: [
    {
      author: "State of Michigan",
      year: "1941",
      title: "Michigan Compiled Laws",
      where: "[1] 290.401 (Act 208 of 1941), standard log rule",
      url: "https://law.uslawyerdatabase.com/us-law/2022-michigan-compiled-laws/chapter-290-weights-measures-and-standards/act-208-of-1941-standard-log-rule-290-401-290-401",
      standing: "read",
    },
    {
      author: "Commonwealth of Massachusetts",
      year: "n.d.",
      title: "Massachusetts General Laws",
      where: "[2] chapter 96, section 11A",
      url: "https://malegislature.gov/Laws/GeneralLaws/PartI/TitleXV/Chapter96/Section11A",
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

  scale: (log) => boardFeet(WIDER_KERF * eighthInchSections(internationalQuarter, log)),

  working(log) {
    const steps = eighthInchWorking(log);
    const narrow = steps.at(-1)?.value ?? NaN;
    return [
      ...steps,
      {
        sum: sum`${WIDER_KERF} * ${narrow}`,
        meaning: "What a 1/4-in kerf leaves of it",
        value: WIDER_KERF * narrow,
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(5, volume),
};
