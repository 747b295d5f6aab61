import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standTable } from "../../src/functions/classTables";
import { plotTable, speciesTable, standSummary } from "../../src/functions/standSummary";
import { errorOf } from "../support/cells";
import { dbh, plot, plots } from "../support/fourPoints";

const point = "Point" as never;
const fixed = "Fixed" as never;

describe("a table that cannot be right", () => {
  const summary = (
    given: Partial<{ plot: unknown; dbh: unknown; plots: unknown; size: unknown; volume: unknown; count: unknown }>,
  ) =>
    errorOf(() =>
      standSummary(
        (given.plot ?? plot) as never,
        (given.dbh ?? dbh) as never,
        (given.plots ?? plots) as never,
        point,
        (given.size ?? 10) as never,
        given.volume as never,
        given.count as never,
      ),
    );

  it.each<[string, Parameters<typeof summary>[0]]>([
    ["Row 10: plot 4 is not in the plot list. And 5 more rows have problems.", { plots: [[1], [2], [3]] }],
    ["Row 1: plot 9 is not in the plot list.", { plot: [[9], [1]], dbh: [[12], [12]] }],
    ['Row 1: plot "north" is not in the plot list.', { plot: [["north"], [1]], dbh: [[12], [12]] }],
    ["Row 2: the plot is missing.", { plot: [[1], [""]], dbh: [[12], [12]] }],
    [
      "Row 2: DBH should be between 1 and 80 in. You have 143. Missing a decimal point?",
      { plot: [[1], [1]], dbh: [[12], [143]] },
    ],
    [
      "Row 1: DBH should be between 1 and 80 in. You have -3. And 1 more row has a problem.",
      { plot: [[1], [8]], dbh: [[-3], [12]] },
    ],
    ['Row 1: DBH needs a number, but the cell has "14.3in". Type just the number.', { plot: [[1]], dbh: [["14.3in"]] }],
    [
      "Row 1: This looks like a date. Excel turns 5/4 or 1/8 into a date; type 1.25 or =5/4.",
      { plot: [[1]], dbh: [[45_000]] },
    ],
    ["Row 1: Volume should be between 0 and 1000000. You have -5.", { plot: [[1]], dbh: [[12]], volume: [[-5]] }],
    [
      'Row 1: Count needs a number, but the cell has "two". Type just the number.',
      { plot: [[1]], dbh: [[12]], count: "two" },
    ],
    ["These lists need the same number of rows: DBH has 2, Plot has 3.", { plot: [[1], [2], [3]], dbh: [[12], [12]] }],
    ["Plot 2 is in the plot list twice.", { plots: [[1], [2], ["2"]] }],
    ["The plot list is empty. Every plot belongs in it, those without trees too.", { plots: [[""]] }],
    ["Basal area factor needs a number in ft2/ac, but the cell is blank.", { size: "" }],
    ["Basal area factor should be between 0.5 and 400 ft2/ac. You have -10.", { size: -10 }],
  ])("says: %s", (message, given) => {
    expect(summary(given)).toMatchObject({ code: "#VALUE!", message });
  });
});

it("whatever cells hold, a table is square and clean, or there is one sentence", () => {
  const cell = fc.oneof(
    fc.constantFrom(0, "", null, "ro", "x", 1, 2, true, -1, 14.3, 143, 1e300, "5/4", NaN, Infinity),
    fc.double(),
  );
  const list = fc.array(fc.tuple(cell), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(list, list, list, list, fc.constantFrom(10, 0, "x", null), (a, b, c, d, size) => {
      const calls = [
        () => standSummary(a, b, c, point, [[size]], d),
        () => standTable(a, b, c, d, fixed, [[size]]),
        () => speciesTable(a, b, c, d, a, point, [[size]]),
        () => plotTable(a, b, c, d, fixed, [[size]]),
      ];
      for (const call of calls) {
        let table: unknown[][];
        try {
          table = call();
        } catch (error) {
          expect((error as { code: string }).code).toMatch(/^#(VALUE!|N\/A)$/);
          expect((error as Error).message).toMatch(/^[A-Z].*[.?]$/s);
          continue;
        }
        for (const row of table) {
          expect(row.length).toBe(table[0]?.length);
          for (const one of row)
            expect(one === undefined || (typeof one === "number" && !Number.isFinite(one))).toBe(false);
        }
      }
    }),
    { numRuns: 500 },
  );
});
