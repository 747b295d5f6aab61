import { shown } from "../../basis/require";
import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";
import { alwaysDown, nearestHalfDown } from "../wholeNumbers";

const OF_SQUARE = 0.55;
const OF_DIAMETER = 1.2;

/** Board feet in a log of 12 ft. */
const twelveFoot = (diameter: number) => OF_SQUARE * diameter * diameter - OF_DIAMETER * diameter;

/**
 * Ontario scaler's rule of 1952.
 *
 *     V = (0.55 D^2 - 1.2 D) L / 12
 *
 *     V  lumber tally                                                  [bf]
 *     D  diameter inside bark at the small end, to the nearest inch    [in]
 *     L  log length, in whole feet                                     [ft]
 *
 * An exact half inch goes to the lower one and a broken foot is dropped: choices of ours, the careful ones.
 * Valid from 3 in up; below, the bracket is under 0. A log shorter than a foot has no length that counts.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of it was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange when the bracket is below 0, or the log is shorter than 1 ft
 */
export const ontario: LogRule = {
  id: "ontario",
  title: "Ontario (from memory)",
  aliases: ["Ontario", "Ontario scaler's rule"],
  fromMemory: true,
  inMenus: false,
  sources: [
    {
      author: "Province of Ontario",
      year: "1952",
      title: "Ontario scaler's rule",
      where: "(0.55 D^2 - 1.2 D) L/12, whole inches and whole feet; formula from memory",
      standing: "from memory",
    },
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the rule is read here",
      where: "an exact half inch to the lower one, broken feet dropped, board feet to the nearest whole one",
      standing: "choice of ours",
    },
  ],

  scale(log) {
    requireLog(log);
    const diameter = nearestHalfDown(log.diameter);
    const length = alwaysDown(log.length);
    const bracket = twelveFoot(diameter);
    if (bracket < 0 || diameter < 1 || length < 1) throw noPublishedValue(ontario, log);

    return boardFeet(bracket * (length / 12));
  },

  working(log) {
    const diameter = nearestHalfDown(log.diameter);
    const length = alwaysDown(log.length);
    const bracket = twelveFoot(diameter);
    return [
      {
        sum: `${shown(log.diameter)} in to the inch`,
        meaning: "Diameter to the nearest inch, a half down",
        value: diameter,
        unit: "in",
      },
      { sum: `${shown(log.length)} ft to the foot`, meaning: "Length, broken feet dropped", value: length, unit: "ft" },
      {
        sum: sum`${OF_SQUARE} * ${diameter} ^ 2 - ${OF_DIAMETER} * ${diameter}`,
        meaning: "Board feet in a log of 12 ft",
        value: bracket,
        unit: "bf",
      },
      {
        sum: sum`${bracket} * ${length} / 12`,
        meaning: "Times the length, over 12",
        value: bracket * (length / 12),
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
