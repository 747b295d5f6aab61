import { OutOfRange } from "../basis/problem";
import { requireNotNegative } from "../basis/require";
import type { Source } from "../basis/source";
import { percent, type BoardFeet, type Percent } from "../basis/units";

export const overrunSources: readonly Source[] = [
  {
    author: "M. E. Plank",
    year: "1985",
    title: "Research Paper PNW-328, Pacific Northwest Forest and Range Experiment Station",
    where: "overrun as lumber tally over net log scale: 150 percent recovery is 50 percent overrun",
    standing: "read",
  },
];

/**
 * How much more lumber was sawn than the log rule had promised; below 0 where it was less.
 *
 *     O = 100 (T - S) / S
 *
 *     O  overrun                          [%]
 *     T  lumber tally                     [bf]
 *     S  net scale of the logs            [bf]
 *
 * @throws InvalidInput when a number is below 0
 * @throws OutOfRange when there is no scale
 */
export function overrun(lumber: BoardFeet, scale: BoardFeet): Percent {
  requireNotNegative("Lumber", lumber, "bf");
  requireNotNegative("Scale", scale, "bf");
  if (scale === 0) throw new OutOfRange("Nothing to work on yet: the scale is 0 bf.");
  return percent((100 * (lumber - scale)) / scale);
}
