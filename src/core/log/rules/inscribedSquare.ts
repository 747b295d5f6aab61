import type { LogRule } from "../logRule";
import { requireLog } from "../requireLog";
import { squaredTimber, squaredTimberSource, squaredTimberWorking } from "../squaredTimber";
import { toNearest } from "../toNearest";

/**
 * Inscribed square rule: the largest square timber in the log.
 *
 *     V = (D / sqrt 2)^2 L / 12
 *
 *     V  squared timber                        [bf]
 *     D  diameter inside bark at the small end [in]
 *     L  log length                            [ft]
 *
 * The excerpt read gives the side as 0.7071 D; the square root it stands for is taken. It gives what the Vermont rule
 * gives before that rounds the diameter. Kept out of menus, since it gives a timber and no boards.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of it was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 */
export const inscribedSquare: LogRule = {
  id: "inscribedSquare",
  title: "Inscribed square",
  inMenus: false,
  sources: [
    squaredTimberSource,
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the rule is read here",
      where: "the diameter is that of the small end",
      standing: "choice of ours",
    },
  ],

  scale(log) {
    requireLog(log);
    return squaredTimber(log.diameter * Math.SQRT1_2, log.length);
  },

  working: ({ diameter, length }) => squaredTimberWorking(Math.SQRT1_2, diameter, length),

  round: (volume) => toNearest(1, volume),
};
