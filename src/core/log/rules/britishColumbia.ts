import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";

const SLAB = 1.5; // in, taken off the diameter [1]
const LEFT_BY_THE_SAW = 8 / 11; // 3/11 goes into sawdust [1]

/**
 * British Columbia board-foot log rule: the circle within the slabs, less what the saw takes.
 *
 *     V = 8/11 * pi/4 (D - 1.5)^2 L / 12
 *
 *     V  lumber tally                          [bf]
 *     D  diameter inside bark at the small end [in]
 *     L  log length                            [ft]
 *
 * Valid from 1.5 in up, where it gives 0.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of it was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange when D < 1.5 in
 */
export const britishColumbia: LogRule = {
  id: "britishColumbia",
  title: "British Columbia (from memory)",
  aliases: ["British Columbia", "BC board foot", "BC"],
  fromMemory: true,
  inMenus: false,
  sources: [
    {
      author: "Province of British Columbia",
      year: "n.d.",
      title: "British Columbia board-foot log rule",
      where: "[1] 1.5 in off for slabs, 3/11 off for kerf; formula from memory",
      standing: "from memory",
    },
    {
      author: "D. Briggs",
      year: "n.d.",
      title: "Forest Products Measurements and Conversion Factors",
      where: "chapter 2, list of contents: names the rule; its formula was not read",
      url: "http://www.ruraltech.org/projects/conversions/briggs_conversions/briggs_ch02/briggs_chapter02_complete.asp",
      standing: "read",
    },
  ],

  scale(log) {
    const { diameter, length } = log;
    requireLog(log);
    if (diameter < SLAB) throw noPublishedValue(britishColumbia, log);

    return boardFeet(LEFT_BY_THE_SAW * (Math.PI / 4) * (diameter - SLAB) ** 2 * (length / 12));
  },

  working({ diameter, length }) {
    const left = diameter - SLAB;
    const circle = (Math.PI / 4) * left ** 2;
    const solid = (circle * length) / 12;
    return [
      { sum: sum`${diameter} - ${SLAB}`, meaning: "Diameter less slabs", value: left, unit: "in" },
      { sum: sum`${Math.PI} / 4 * ${left} ^ 2`, meaning: "Area of that circle", value: circle, unit: "in2" },
      { sum: sum`${circle} * ${length} / 12`, meaning: "Times the length, over 12", value: solid, unit: "bf" },
      {
        sum: sum`${solid} * ${LEFT_BY_THE_SAW}`,
        meaning: "What the saw leaves of it",
        value: solid * LEFT_BY_THE_SAW,
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
