import type { LogRule } from "../logRule";
import { requireLog } from "../requireLog";
import { squaredTimber, squaredTimberSource, squaredTimberWorking } from "../squaredTimber";
import { toNearest } from "../toNearest";

const SIDE = 2 / 3; // of the middle diameter

/**
 * Two-thirds rule, also called the Big Sandy cube: the square timber whose side is two-thirds of the middle diameter.
 *
 *     V = (2/3 D)^2 L / 12
 *
 *     V  squared timber                                [bf]
 *     D  diameter inside bark half way along the log   [in]
 *     L  log length                                    [ft]
 *
 * It is the one rule here that wants the middle diameter. Kept out of menus, since it gives a timber and no boards.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of it was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 */
export const twoThirds: LogRule = {
  id: "twoThirds",
  title: "Two-thirds of middle diameter",
  aliases: ["Two-thirds", "Big Sandy cube", "Big Sandy"],
  measuredAt: "middle",
  inMenus: false,
  sources: [
    squaredTimberSource,
    {
      author: "The trade",
      year: "",
      title: "Big Sandy cube",
      where: "another name of the two-thirds rule",
      standing: "from memory",
    },
  ],

  scale(log) {
    requireLog(log);
    return squaredTimber(SIDE * log.diameter, log.length);
  },

  working: ({ diameter, length }) => squaredTimberWorking(SIDE, diameter, length),

  round: (volume) => toNearest(1, volume),
};
