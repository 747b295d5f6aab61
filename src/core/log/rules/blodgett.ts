import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";

const STANDARD_LOG = 16 * 16; // in2: the standard log is 16 in across and 1 ft long [1]
const BLODGETT_FEET_PER_MBF = 115; // on the end diameter; 100 on the middle one [1]

/**
 * Blodgett log rule of New Hampshire, on the end diameter.
 *
 *     B = D^2 L / 256
 *     V = 1000 B / 115
 *
 *     V  lumber tally                          [bf]
 *     B  Blodgett feet                         [pieces 16 in across and 1 ft long]
 *     D  diameter inside bark at the small end [in]
 *     L  log length                            [ft]
 *
 * On the middle diameter the rule has 100 Blodgett feet to the thousand; that form is not taken here.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of it was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 */
export const blodgett: LogRule = {
  id: "blodgett",
  title: "Blodgett (from memory)",
  aliases: ["Blodgett", "New Hampshire"],
  fromMemory: true,
  inMenus: false,
  sources: [
    {
      author: "State of New Hampshire",
      year: "n.d.",
      title: "Blodgett log rule",
      where: "[1] standard log 16 in by 1 ft; 115 of them to the thousand on the end diameter; from memory",
      standing: "from memory",
    },
  ],

  scale(log) {
    const { diameter, length } = log;
    requireLog(log);
    const blodgettFeet = (diameter * diameter * length) / STANDARD_LOG;
    return boardFeet((1000 * blodgettFeet) / BLODGETT_FEET_PER_MBF);
  },

  working({ diameter, length }) {
    const standardLogs = (diameter * diameter * length) / STANDARD_LOG;
    return [
      {
        sum: sum`${diameter} ^ 2 * ${length} / ${STANDARD_LOG}`,
        meaning: "Blodgett feet: standard logs 16 in across and 1 ft long",
        value: standardLogs,
        unit: "Blodgett feet",
      },
      {
        sum: sum`1000 * ${standardLogs} / ${BLODGETT_FEET_PER_MBF}`,
        meaning: `In board feet, ${BLODGETT_FEET_PER_MBF} of them to the thousand`,
        value: (1000 * standardLogs) / BLODGETT_FEET_PER_MBF,
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
