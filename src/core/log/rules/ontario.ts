import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";
import { alwaysDown, nearestHalfDown } from "../wholeNumbers";

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
    const twelveFoot = 0.55 * diameter * diameter - 1.2 * diameter;
    if (twelveFoot < 0 || diameter < 1 || length < 1) throw noPublishedValue(ontario, log);

    return boardFeet(twelveFoot * (length / 12));
  },

  round: (volume) => toNearest(1, volume),
};
