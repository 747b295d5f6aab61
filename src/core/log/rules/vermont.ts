import { shown } from "../../basis/require";
import { sum } from "../../basis/step";
import { boardFeet, feet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";
import { nearestHalfDown } from "../wholeNumbers";

const STATED_LENGTH = 12; // ft: the length that the statute states the rule for [1]

/**
 * Vermont log rule, as the statute has it: half the square of the top diameter for a log of 12 ft.
 *
 *     V = D^2 / 2 * L / 12
 *
 *     V  lumber tally                                          [bf]
 *     D  average top diameter inside bark, to the nearest inch [in]
 *     L  log length                                            [ft]
 *
 * A fraction of an inch below a half is dropped, one above a half counts as a whole inch [1]; an exact half, on which
 * the statute is silent, is dropped here (a choice of ours, the careful one).
 * A log longer than 12 ft is measured in 12-ft sections from the top [1]. Where only the small end is known, each of
 * them stands at that diameter; where the large end is given too, at its own.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since the statute does not round.
 *
 * @throws InvalidInput when D or L is not a number above 0
 *
 * [1] 9 V.S.A. 2693
 */
export const vermont: LogRule = {
  id: "vermont",
  title: "Vermont",
  sections: feet(STATED_LENGTH),
  sources: [
    {
      author: "State of Vermont",
      year: "n.d.",
      title: "Vermont Statutes Annotated",
      where: "[1] 9 V.S.A. 2693: the rule, its rounding of the diameter, sections of 12 ft",
      url: "http://laws9.com/statutes/vermont/title-09/chapter-73/2693",
      standing: "read",
    },
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the rule is read here",
      where: "a diameter on the exact half inch goes to the lower one; board feet to the nearest whole one",
      standing: "choice of ours",
    },
  ],

  scale(log) {
    requireLog(log);
    const diameter = nearestHalfDown(log.diameter);
    return boardFeet(((diameter * diameter) / 2) * (log.length / STATED_LENGTH));
  },

  working({ diameter, length }) {
    const whole = nearestHalfDown(diameter);
    const stated = (whole * whole) / 2;
    return [
      {
        sum: `${shown(diameter)} in to the inch`,
        meaning: "Diameter to the nearest inch, a half down",
        value: whole,
        unit: "in",
      },
      {
        sum: sum`${whole} ^ 2 / 2`,
        meaning: `Half its square: board feet in a log of ${STATED_LENGTH} ft`,
        value: stated,
        unit: "bf",
      },
      {
        sum: sum`${stated} * ${length} / ${STATED_LENGTH}`,
        meaning: `Times the length, over ${STATED_LENGTH}`,
        value: stated * (length / STATED_LENGTH),
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
