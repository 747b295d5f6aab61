import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import { northwestFactors } from "../../reference/northwestFactors";
import type { LogRule, ScaledLog } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";
import { alwaysDown } from "../wholeNumbers";

const { groups, rows, smallestDiameter, sources } = northwestFactors;

/** Where a log is looked up: whole inch, whole foot, and the factor there, undefined outside the table. */
function entry(log: ScaledLog) {
  const [inch, length] = [alwaysDown(log.diameter), alwaysDown(log.length)];
  const group = groups.findIndex((longest) => length <= longest);
  return { inch, length, factor: rows[inch - smallestDiameter]?.[group] };
}

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
  title: "Scribner Decimal C by Northwest factors (from memory)",
  aliases: [
    "Scribner Decimal C by Northwest factors",
    "Scribner Decimal C, Northwest factors",
    "Northwest factors",
    "Scribner Northwest",
  ],
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
    const { length, factor } = entry(log);
    if (factor === undefined || length < 1) throw noPublishedValue(scribnerNorthwestFactors, log);

    return toNearest(10, boardFeet(factor * length));
  },

  working(log) {
    const { inch, length, factor = NaN } = entry(log);
    const volume = factor * length;
    return [
      {
        sum: `table at ${inch} in and ${length} ft`,
        meaning: "Factor read in the table, broken inches and feet dropped",
        value: factor,
        unit: "bf/ft",
      },
      { sum: sum`${factor} * ${length}`, meaning: "Times the whole feet", value: volume, unit: "bf" },
      {
        sum: sum`round ${volume} to tens`,
        meaning: "Rounded to tens of board feet",
        value: toNearest(10, boardFeet(volume)),
        unit: "bf",
      },
    ];
  },

  round: (volume) => toNearest(10, volume),
};
