import { boardFeet } from "../../basis/units";
import { northwestFactors } from "../../reference/northwestFactors";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";
import { alwaysDown } from "../wholeNumbers";

const { groups, rows, smallestDiameter, sources } = northwestFactors;

/**
 * Scribner Decimal C log rule by the per-foot factors of the Northwest, for short and for long logs.
 *
 *     V = 10 * round(f L / 10)
 *
 *     V  lumber tally                                                       [bf]
 *     f  factor of the diameter, in one of three groups of lengths          [bf/ft]
 *     L  log length, whole feet, 1 to 40                                    [ft]
 *
 * An exact half of ten goes up. Broken inches and broken feet are dropped: choices of ours, the careful ones, where
 * the source was not seen. It is not the Forest Service table: of that table's 280 cells 14 differ.
 *
 * @throws InvalidInput when diameter or length is not a number above 0
 * @throws OutOfRange outside 1 to 50 in and 1 to 40 ft
 */
export const scribnerNorthwestFactors: LogRule = {
  id: "scribnerNorthwestFactors",
  title: "Scribner Decimal C, Northwest factors (from memory)",
  aliases: ["Scribner Decimal C, Northwest factors", "Northwest factors", "Scribner Northwest"],
  fromMemory: true,
  inMenus: false,
  sources: [
    ...sources,
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the factors are entered here",
      where: "broken inches and broken feet are dropped; nothing above 50 in or 40 ft",
      standing: "choice of ours",
    },
  ],

  scale(log) {
    requireLog(log);
    const length = alwaysDown(log.length);
    const group = groups.findIndex((longest) => length <= longest);
    const factor = rows[alwaysDown(log.diameter) - smallestDiameter]?.[group];
    if (factor === undefined || length < 1) throw noPublishedValue(scribnerNorthwestFactors, log);

    return toNearest(10, boardFeet(factor * length));
  },

  round: (volume) => toNearest(10, volume),
};
