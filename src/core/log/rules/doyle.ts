import { requireAtLeast } from "../../basis/require";
import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";

const SLABS_AND_EDGINGS = 4; // in, taken off the diameter before squaring [1]

/**
 * Doyle log rule: the lumber tally of one straight, sound log.
 *
 *     V = ((D - 4) / 4)^2 L = (D - 4)^2 L / 16
 *
 *     V  lumber tally                          [bf]
 *     D  diameter inside bark at the small end [in]
 *     L  log length                            [ft]
 *
 * Valid for D >= 4 in, where it gives 0; below that the square would grow again.
 * It takes no account of taper [2], and scales small logs too low and large logs too high [3].
 * Printed tables show the nearest whole board foot; they disagree where the exact value ends in a half.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange when D < 4 in
 */
export const doyle: LogRule = {
  id: "doyle",
  title: "Doyle",
  sources: [
    {
      author: "State of Louisiana",
      year: "1992",
      title: "Louisiana Revised Statutes",
      where: "[1] 3:4641 (Acts 1992, No. 55): the formula in words and figures",
      url: "https://lexace.ai/us/statute/louisiana/RS-3-4641",
      standing: "read",
    },
    {
      author: "D. Cassens",
      year: "n.d.",
      title: "Log and Tree Scaling Techniques, Purdue University FNR-191",
      where: "[2] section on the Doyle rule",
      url: "https://docslib.org/doc/12689756/log-and-tree-scaling-techniques-fnr-191",
      standing: "read",
    },
    {
      author: "globalwood.org",
      year: "n.d.",
      title: "Log rules",
      where:
        "[3] the slab allowance of 4 in is about twice the usual: too little for small logs, too much for large ones",
      url: "http://globalwood.org/tech/tech_logrule.htm",
      standing: "read",
    },
  ],

  scale(log) {
    const { diameter, length } = log;
    requireLog(log);
    requireAtLeast("The Doyle rule", diameter, SLABS_AND_EDGINGS, "in");

    return boardFeet((diameter - SLABS_AND_EDGINGS) ** 2 * (length / 16));
  },

  working({ diameter, length }) {
    const left = diameter - SLABS_AND_EDGINGS;
    const side = left / 4;
    return [
      {
        sum: sum`${diameter} - ${SLABS_AND_EDGINGS}`,
        meaning: "Diameter less slabs and edgings",
        value: left,
        unit: "in",
      },
      { sum: sum`${left} / 4`, meaning: "A quarter of it", value: side, unit: "in" },
      { sum: sum`${side} ^ 2`, meaning: "Squared: board feet in each foot of length", value: side ** 2, unit: "bf" },
      { sum: sum`${side ** 2} * ${length}`, meaning: "Times the length", value: side ** 2 * length, unit: "bf" },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
