import fc from "fast-check";

const oddNumber = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, 0.15, 1e-9, 143, 45_000, 1e9, -1e9, 1e15, 1e308, -1e308, NaN, Infinity, -Infinity),
  fc.double({ noNaN: true }),
  fc.integer({ min: -1000, max: 1000 }),
);

const oddText = fc.oneof(
  fc.constantFrom("", " ", "14.3in", "5/4", "5-Apr", "2026-01-05", "Doyle", "RP", "#N/A", "1e400", "NaN", "-", "Yes"),
  fc.constantFrom("=1+1", "'12", "__proto__", "constructor", "toString", "12,5", "٣", "\u0000", "x".repeat(5000)),
  fc.string(),
);

const oddCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: oddNumber },
  { weight: 3, arbitrary: oddText },
  fc.boolean(),
  fc.constant(null),
  fc.constant(undefined),
);

const raggedRange = fc.array(fc.array(oddCell, { maxLength: 4 }), { maxLength: 5 });

/** Whatever a cell or a range may hold, and shapes that no spreadsheet should send but one might. */
export const hostileArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: oddCell },
  { weight: 3, arbitrary: raggedRange },
  fc.constant([]),
  fc.constant([[]]),
  fc.array(oddCell, { maxLength: 4 }),
);

const soundNumber = fc.oneof(
  fc.constantFrom(1, 2, 2.5, 3, 8, 10, 12, 14, 16, 20, 78, 95, 0.125, 0.1),
  fc.double({ min: 0.5, max: 40, noNaN: true }),
);

const soundText = fc.constantFrom(
  "Doyle",
  "Scribner",
  "Scribner Decimal C",
  "International 1/4",
  "Vermont",
  "Half alternate",
  "Interior",
  "Sweep",
  "Point",
  "Fixed",
  "Strip",
  "All",
  "Yes",
  "By area",
  "Live",
  "Best",
  "Percent",
  "Center",
  "imperial",
  "metric",
  "Smalian",
  "ro",
  "wo",
  "LOGSCALE",
  "BOARDFEET",
  "LUMBERWEIGHT",
  "northern red oak",
  "Green",
  "Hardwood",
  "Flat",
  "Felling",
  "Bark ratio",
  "Total height",
);

const columnOf = (cell: fc.Arbitrary<unknown>) =>
  fc.array(cell, { minLength: 3, maxLength: 3 }).map((cells) => cells.map((one) => [one]));

const boards = fc.constantFrom(
  [
    [1, 4, 900],
    [1, 6, 900],
    [2, 6, 800],
  ],
  [[1, 4]],
);

/** What a sensible user sends: right shapes and sizes, though not always in the right place. */
export const plausibleArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: soundNumber },
  { weight: 2, arbitrary: soundText },
  { weight: 3, arbitrary: columnOf(soundNumber) },
  { weight: 2, arbitrary: columnOf(fc.constantFrom(1, 2, 3, "ro", "sm")) },
  boards,
  fc.constant(null),
);
