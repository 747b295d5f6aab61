import { describe, expect, it } from "vitest";
import { logsFromHeight } from "../../src/functions/woods";
import { SideOfBark, stemDiameter, stemHeight, TaperUnits } from "../../src/functions/taper";
import { allSpecies } from "../../src/core/tree/national/species";
import { numberIn, published } from "../support/published";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const notAvailable = (message: string) => expect.objectContaining({ code: "#N/A", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

const only = (answer: unknown[][]) => answer[0]?.[0] as number;
const oak = (top: unknown, bark: unknown = null) =>
  stemHeight(cell("white oak"), cell(18.1), cell(65), cell(top), cell(bark), cell("M220"));

describe("STEMHEIGHT", () => {
  const TOPS: Readonly<Record<string, number>> = { h_to_4in_top: 4, h_to_7in_top: 7, h_to_9in_top: 9 };
  const tops = published("tree/national/workedExamples.csv").rows.filter(({ quantity = "" }) => quantity in TOPS);

  // Coefficients of 12 decimals in the report, of 9 in its tables: agreement to 1e-5 of the height.
  it.each(tops.map((row) => [row.species, row.quantity, row] as const))("of the report's %s: %s", (_, __, row) => {
    const height = only(
      stemHeight(
        cell(row.spcd),
        cell(numberIn(row, "dbh")),
        cell(numberIn(row, "height")),
        cell(TOPS[row.quantity ?? ""]),
        SideOfBark.Outside,
        cell(row.division),
      ),
    );
    expect(Math.abs(height / numberIn(row, "value") - 1)).toBeLessThan(1e-5);
  });

  it("has a test for every top that the report prints", () => {
    expect(tops.length).toBe(6);
  });

  // An independent computation from the same tables has 13.1813 in inside bark and 14.4595 outside at 17.3 ft.
  it("finds the height of a diameter on either side of the bark", () => {
    expect(oak(13.1813)).toEqual([[near(17.3, 2)]]);
    expect(oak(14.4595, SideOfBark.Outside)).toEqual([[near(17.3, 2)]]);
  });

  it("agrees with halving STEMDIAMETER, for every species and side", () => {
    let checked = 0;
    for (const { code } of allSpecies()) {
      for (const side of [SideOfBark.Inside, SideOfBark.Outside]) {
        const answer: unknown = stemHeight(cell(code), cell(16), cell(70), cell(9), side)[0]?.[0];
        if (typeof answer !== "number") continue; // woodland trees, which have no equations
        let [low, high] = [10, 70];
        const at = (h: number) => only(stemDiameter(cell(code), cell(16), cell(70), cell(h), side));
        if (at(low) < 9) continue;
        for (let i = 0; i < 40; i += 1) {
          const middle = (low + high) / 2;
          if (at(middle) > 9) low = middle;
          else high = middle;
        }
        expect(answer, `${code} ${side}`).toBeCloseTo(low, 6);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThan(900);
  });

  it("tells with LOGSFROMHEIGHT the logs up to the top of a product", () => {
    // 39.21413 ft to 9 in outside bark, less a stump of 1 ft: 38.2 ft are 2.34 logs of 16.3 ft, 2.5 to the half.
    const top = oak(9, SideOfBark.Outside);
    expect(logsFromHeight([[only(top) - 1]])).toEqual([[2.5]]);
    // 56.72043 ft to 4 in: 8-ft bolts with 0.3 ft of trim, whole ones: 6.71, so 7.
    expect(logsFromHeight([[only(oak(4, SideOfBark.Outside)) - 1]], 8, 0.3, 1)).toEqual([[7]]);
  });

  it("takes a column of tops, passes over blanks, and answers in the unit that is given", () => {
    expect(oak(column(9, "", null, 0, 4), SideOfBark.Outside)).toEqual(
      column(near(39.21413, 3), "", "", "", near(56.72043, 3)),
    );
    expect(
      stemHeight(
        cell(802),
        cell(18.1 * 2.54),
        cell(65 * 0.3048),
        cell(9 * 2.54),
        SideOfBark.Outside,
        cell("M220"),
        cell(null),
        TaperUnits.Metric,
      ),
    ).toEqual([[near(39.21413 * 0.3048, 3)]]);
  });

  it("says when the stem is nowhere so thick, and refuses a top that is none", () => {
    expect(oak(30)).toEqual([[notAvailable("This stem is nowhere 30 in thick above its stump of 1 ft.")]]);
    expect(oak(column(0.1, "nine"))).toEqual([
      [valueError("Diameter should be between 0.5 and 150 in. You have 0.1.")],
      [valueError('Diameter needs a number, but the cell has "nine". Type just the number.')],
    ]);
  });
});
