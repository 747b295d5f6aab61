import { describe, expect, it } from "vitest";
import { heightsMeasured } from "../../src/core/cruise/checkHeight";
import { speciesFacts } from "../../src/core/tree/national/speciesFacts";
import { checkHeights, checkSpecies, FactOfSpecies, speciesOf } from "../../src/functions/speciesList";
import { published } from "../support/published";

const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const notAvailable = (message: unknown) => expect.objectContaining({ code: "#N/A", message }) as unknown;

describe("SPECIESOF", () => {
  it("names the species that a name or a code means, cell by cell", () => {
    expect(speciesOf(column("maple, red", 802, "", "833"))).toEqual(
      column("red maple", "white oak", "", "northern red oak"),
    );
  });

  // The inventory's table of species, row 316.
  it.each<[string, unknown]>([
    ["FIA code", 316],
    ["Kind", "hardwood"],
    ["Group", "soft maple and birch"],
    ["Specific gravity", 0.49],
    ["Green moisture pct", 63.53061],
  ])("tells the %s of red maple", (fact, expected) => {
    expect(speciesOf(column("red maple"), fact as FactOfSpecies)).toEqual([[expected]]);
  });

  it("tells what a cubic foot of green wood weighs", () => {
    // By hand: 62.4 x 0.49 x 1.6353061 = 50.0 lb.
    const weight = speciesOf(column("red maple"), FactOfSpecies.Density)[0]?.[0] as number;
    expect(weight).toBeCloseTo(62.4 * 0.49 * 1.6353061, 9);
  });

  it("proposes the species that a near miss was meant for, and says what the list lacks", () => {
    expect(speciesOf(column("red mapel"))).toEqual([
      [notAvailable(expect.stringMatching(/"red mapel" is not .* Did you mean red maple/))],
    ]);
    expect(speciesOf(column(7199), FactOfSpecies.Gravity)).toEqual([
      [notAvailable("The national species list has no wood density for Chinese chastetree.")],
    ]);
  });

  it("offers every fact there is in its menu", () => {
    expect(Object.values(FactOfSpecies)).toEqual(speciesFacts.map(({ title }) => title));
  });
});

describe("the bark ratio of a species", () => {
  const table = published("tree/national/barkPercents.csv");

  // 1 / sqrt(1 + p / 100), worked here from the printed percent of every species that the list of species has.
  it(`follows from each of the ${table.rows.length} printed percents`, () => {
    let found = 0;
    for (const { spcd, bark_vol_pct } of table.rows) {
      const [[ratio]] = speciesOf([[spcd]], FactOfSpecies.Bark) as [[unknown]];
      if (typeof ratio !== "number") continue;
      found += 1;
      expect(100 / ratio ** 2 - 100, spcd).toBeCloseTo(Number(bark_vol_pct), 8);
    }
    expect(found).toBeGreaterThan(300);
  });

  it.each([
    ["white oak", 0.928],
    ["northern red oak", 0.913],
    ["sugar maple", 0.93],
    ["American beech", 0.971],
    ["ponderosa pine", 0.892],
  ])("is that of %s, %d", (name, ratio) => {
    expect(speciesOf([[name]], FactOfSpecies.Bark)[0]?.[0]).toBeCloseTo(ratio, 3);
  });
});

describe("CHECKSPECIES", () => {
  it("lets pass what means one species, and blank lines", () => {
    expect(checkSpecies(column("sugar maple", "our big oaks", ""), column("", 833, ""))).toEqual(column("", "", ""));
  });

  it.each([
    [
      "red mapel",
      "",
      '"red mapel" is not in the national list, so total heights give it no wood. Did you mean red maple',
    ],
    [
      "xyzzy",
      "",
      '"xyzzy" is not in the national list, so total heights give it no wood. Give its FIA code beside it.',
    ],
    ["bastard oak", "", '"bastard oak" is the name of more than one species. Use a code instead:'],
    ["", 99999, "FIA code 99999 is not in the national list."],
    ["red maple", 833, "FIA code 833 is northern red oak, not red maple."],
    ["", "red maple", "FIA code red maple is not in the national list."],
  ])("asks about %s, %s", (name, code, sentence) => {
    expect(checkSpecies([[name]], [[code]])[0]?.[0]).toContain(sentence);
  });
});

describe("CHECKHEIGHTS", () => {
  const check = (dbh: unknown, logs: unknown, height: unknown, measured?: string) =>
    checkHeights(cell(dbh), cell(logs), cell(height), measured)[0]?.[0] as string;

  it.each([
    [14, 2, null, "Logs"],
    [14, null, 80, "Total height"],
    [14, 2, 80, "Both"],
    [9, null, 60, "Both"],
    [14, null, null, "Logs"],
    [null, null, null, "Both"],
    [14, 2, 80, undefined],
  ])("lets %s in, %s logs, %s ft pass where %s was measured", (dbh, logs, height, measured) => {
    expect(check(dbh, logs, height, measured)).toBe("");
  });

  it.each([
    [14, null, 80, "Logs", "Logs are missing, so this tree adds wood but no board feet; Setup says logs are measured."],
    [
      14,
      2,
      null,
      "Total height",
      "Total height is missing, so this tree adds board feet but no wood; Setup says total height is measured.",
    ],
    [14, null, null, "Total height", "Total height is missing, so this tree adds no wood."],
    [
      14,
      2,
      null,
      "Both",
      "Total height is missing, so this tree adds board feet but no wood; Setup says both heights are measured.",
    ],
    [14, null, 2.5, "Total height", "Total height 2.5 ft is less than 5 ft. Are these logs?"],
    [14, null, 850, "Total height", "Total height 850 ft is over 200 ft. Missing a decimal point?"],
    [6, null, 120, "Total height", "Total height 120 ft looks like too much for 6 in."],
    [14, 3, 45, "Both", "Total height 45 ft does not hold 3 logs of 16 ft."],
    [14, "two", 45, "Both", 'Logs needs a number, but the cell has "two". Type just the number.'],
  ])("asks about %s in, %s logs, %s ft where %s was measured", (dbh, logs, height, measured, sentence) => {
    expect(check(dbh, logs, height, measured)).toBe(sentence);
  });

  it("takes columns, and says when they differ in length", () => {
    expect(checkHeights(column(14, 12), column(2, 1), column(80, 70), "Both")).toEqual(column("", ""));
    expect(checkHeights(column(14, 12), column(2), column(80, 70, 60), "Both")[0]?.[0]).toContain(
      "need the same number of rows",
    );
  });

  it("says in every row when what was measured is not in its list", () => {
    expect(check(14, 2, 80, "Ladder")).toBe(
      `Height measured should be one of: ${heightsMeasured.map(({ title }) => title).join(", ")}. You have "Ladder".`,
    );
  });
});
