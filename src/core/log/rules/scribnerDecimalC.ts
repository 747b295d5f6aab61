import { shown } from "../../basis/require";
import { sum } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import { scribnerDecimalCTable } from "../../reference/scribnerDecimalCTable";
import type { LogRule, ScaledLog } from "../logRule";
import { noPublishedValue } from "../noPublishedValue";
import { requireLog } from "../requireLog";
import { toNearest } from "../toNearest";
import { A_HAIR, nearestHalfDown } from "../wholeNumbers";

const { rows, smallestDiameter, lengths, sources } = scribnerDecimalCTable;

/** Where a log is looked up: the whole inch, and the even foot. */
const entry = ({ diameter, length }: ScaledLog) => ({
  inch: nearestHalfDown(diameter),
  evenFoot: 2 * Math.floor((length + A_HAIR) / 2),
});

/** Tens of board feet; undefined outside the table. */
const tensAt = ({ inch, evenFoot }: ReturnType<typeof entry>): number | undefined =>
  rows[inch - smallestDiameter]?.[(evenFoot - lengths[0]) / 2];

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
    requireLog(log);
    const tens = tensAt(entry(log));
    if (tens === undefined) throw noPublishedValue(scribnerDecimalC, log);

    return boardFeet(10 * tens);
  },

  working(log) {
    const { inch, evenFoot } = entry(log);
    const tens = tensAt({ inch, evenFoot }) ?? NaN;
    const { diameter, length } = log;
    return [
      {
        sum: `${shown(diameter)} in to the inch`,
        meaning: "Diameter to the nearest inch, a half down",
        value: inch,
        unit: "in",
      },
      {
        sum: `${shown(length)} ft to the even foot`,
        meaning: "Length dropped to the even foot",
        value: evenFoot,
        unit: "ft",
      },
      {
        sum: `table at ${inch} in and ${evenFoot} ft`,
        meaning: "Read in the printed table",
        value: tens,
        unit: "tens of bf",
      },
      { sum: sum`${tens} * 10`, meaning: "In board feet", value: 10 * tens, unit: "bf" },
    ];
  },

  round: (volume) => toNearest(volume < 10 ? 5 : 10, volume),
};
