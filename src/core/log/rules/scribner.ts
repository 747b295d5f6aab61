import { sum } from "../../basis/step";
import { boardFeet, type Inches } from "../../basis/units";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";

const OF_SQUARE = 0.79; // [1]
const OF_DIAMETER = 2; // [1]
const CONSTANT = 4; // [1]

/** Board feet in a log of 16 ft. [1] */
const sixteenFoot = (diameter: Inches) => OF_SQUARE * diameter * diameter - OF_DIAMETER * diameter - CONSTANT;

/**
 * Scribner log rule as a formula: a smooth curve through the diagrams of 1846.
 *
 *     V = (0.79 D^2 - 2 D - 4) L / 16
 *
 *     V  lumber tally                          [bf]
 *     D  diameter inside bark at the small end [in]
 *     L  log length                            [ft]
 *
 * Valid from about 3.85 in up, where the bracket is not below 0. The diagrams are lumpy and the curve is not:
 * for 16-ft logs of 6 to 40 in it lies up to 41 bf away from the Decimal C table, and does not stand in for it.
 * Rounded to the nearest whole board foot, half up: a choice of ours, since no table of the formula was found.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange when the bracket is below 0
 */
export const scribner: LogRule = {
  id: "scribner",
  title: "Scribner (from memory)",
  aliases: ["Scribner", "Scribner formula"],
  fromMemory: true,
  sources: [
    {
      author: "D. Bruce and F. X. Schumacher",
      year: "1950",
      title: "Forest Mensuration",
      where: "[1] the regression (0.79 D^2 - 2 D - 4) L/16; coefficients and credit from memory, as widely reprinted",
      standing: "from memory",
    },
    {
      author: "C. Mesavage and J. W. Girard",
      year: "1946",
      title: "Tables for Estimating Board-Foot Volume of Timber",
      where: "Form Class 78, Scribner, first 16-ft log, as reprinted: within 2.2 bf of the formula in all 31 cells",
      url: "https://handbook.sref.info/doku.php?id=tree_volume_tables",
      standing: "read",
    },
  ],

  scale(log) {
    const { diameter, length } = log;
    requireLog(log);
    const bracket = sixteenFoot(diameter);
    if (bracket < 0) throw noPublishedValue(scribner, log);

    return boardFeet(bracket * (length / 16));
  },

  working({ diameter, length }) {
    const bracket = sixteenFoot(diameter);
    return [
      {
        sum: sum`${OF_SQUARE} * ${diameter} ^ 2 - ${OF_DIAMETER} * ${diameter} - ${CONSTANT}`,
        meaning: "Board feet in a log of 16 ft",
        value: bracket,
        unit: "bf",
      },
      {
        sum: sum`${bracket} * ${length} / 16`,
        meaning: "Times the length, over 16",
        value: bracket * (length / 16),
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(1, volume),
};
