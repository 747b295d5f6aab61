import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";

const SLAB = 1; // in, taken off the diameter [1]
const DIVISOR = 20; // [1]

/**
 * Roy log rule, of Quebec.
 *
 *     V = (D - 1)^2 L / 20
 *
 *     V  lumber tally                          [bf]
 *     D  diameter inside bark at the small end [in]
 *     L  log length                            [ft]
 *
 * Some lists have L / 16 instead. With 20 a log of 12 in x 16 ft holds 96.8 bf, beside 96.9 by International
 * 1/4-inch; with 16 it would hold 121, and so 20 is taken.
 * Valid from 1 in up, where it gives 0.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of it was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange when D < 1 in
 */
export const roy: LogRule = {
  id: "roy",
  title: "Roy (from memory)",
  aliases: ["Roy", "Quebec"],
  fromMemory: true,
  inMenus: false,
  sources: [
    {
      author: "Province of Quebec",
      year: "n.d.",
      title: "Roy log rule",
      where: "[1] (D - 1)^2 L/20; formula from memory, and some lists have 16 for 20",
      standing: "from memory",
    },
  ],

  scale(log) {
    const { diameter, length } = log;
    requireLog(log);
    if (diameter < SLAB) throw noPublishedValue(roy, log);

    return boardFeet((diameter - SLAB) ** 2 * (length / DIVISOR));
  },

  working({ diameter, length }) {
    const left = diameter - SLAB;
    return [
      { sum: sum`${diameter} - ${SLAB}`, meaning: "Diameter less slabs", value: left, unit: "in" },
      {
        sum: sum`${left} ^ 2 * ${length} / ${DIVISOR}`,
        meaning: `Squared, times the length, over ${DIVISOR}`,
        value: left ** 2 * (length / DIVISOR),
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
