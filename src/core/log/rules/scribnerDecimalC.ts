import { boardFeet } from "../../basis/units";
import { scribnerDecimalCTable } from "../../reference/scribnerDecimalCTable";
import type { LogRule } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";

const { rows, smallestDiameter, lengths, sources } = scribnerDecimalCTable;

/** in, ft: keeps 14.5 in or 16 ft what they are when they come out of a conversion from metric a hair off. */
const A_HAIR = 1e-9;

/**
 * Scribner Decimal C log rule, read from the short-log table of the Forest Service.
 *
 * The table has whole inches, 6 to 40, and even feet, 6 to 20; between them it is entered as scalers do:
 *
 *     diameter  to the nearest inch, an exact half to the lower one (14.5 in is read at 14, 14.6 at 15)
 *     length    dropped to the next lower even foot (15 ft is read at 14)
 *
 * Never filled in by a formula: the diagrams behind the table are lumpy, and no curve gives their values.
 * A net scale is rounded to tens as the table is, half up, and to 5 bf below ten, where the table has half units.
 *
 * @throws InvalidInput when diameter or length is not a number above 0
 * @throws OutOfRange outside the table
 */
export const scribnerDecimalC: LogRule = {
  id: "scribnerDecimalC",
  title: "Scribner Decimal C",
  sources: [
    ...sources,
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the table is entered here",
      where:
        "diameter to the nearest inch, an exact half to the lower; length to the next lower even foot; nothing outside the table",
      standing: "common practice",
    },
  ],

  scale(log) {
    const { diameter, length } = log;
    requireLog(log);
    const row = rows[Math.ceil(diameter - 0.5 - A_HAIR) - smallestDiameter];
    const tens = row?.[Math.floor((length + A_HAIR - lengths[0]) / 2)];
    if (tens === undefined) throw noPublishedValue(scribnerDecimalC, log);

    return boardFeet(10 * tens);
  },

  round: (volume) => toNearest(volume < 10 ? 5 : 10, volume),
};
