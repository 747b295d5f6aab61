import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { coefficientRow } from "../../../../src/core/tree/national/coefficientRows";
import { divisionOf, divisions } from "../../../../src/core/tree/national/divisions";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import { allSpecies } from "../../../../src/core/tree/national/species";
import { naturalStand, standOrigins } from "../../../../src/core/tree/national/standOrigins";
import { published } from "../../../support/published";
import { projectRoot } from "../../../support/sourceFiles";
import { NOT_LISTED, tableNames } from "../../../support/national/packedTables";
import { madeFiles } from "../../../support/national/write";
import { found, printedGroupRows, printedSpeciesRows, printedValues } from "./nationalTables";

const planted = standOrigins[1] ?? naturalStand;

describe("the packed tables", () => {
  it.each(Object.entries(madeFiles))("%s is made from the printed tables as they stand", (file, contents) => {
    expect(readFileSync(path.join(projectRoot, file), "utf8")).toBe(contents());
  });

  it("give back every coefficient of every printed row, to the last digit", () => {
    expect(printedSpeciesRows.length).toBe(406 + 339 + 360 + 360 + 405 + 173);
    for (const printed of printedSpeciesRows)
      expect(found(printed), JSON.stringify(printed.row)).toEqual(printedValues(printed.row));
  });

  it("leave out one listed row outside bark, whose species is not in the list", () => {
    for (const table of tableNames) {
      const left = published(`tree/national/${table}.species.csv`).rows.filter(({ SPCD }) => SPCD === NOT_LISTED);
      expect(left.length, table).toBe(table.startsWith("outside") ? 1 : 0);
    }
    expect(allSpecies().some(({ code }) => String(code) === NOT_LISTED)).toBe(false);
  });

  it("give back every row of every group, for a species that has none of its own", () => {
    expect(printedGroupRows.length).toBe(9 * tableNames.length);
    for (const { table, group, row } of printedGroupRows) {
      const own = new Set(published(`tree/national/${table}.species.csv`).rows.map(({ SPCD }) => Number(SPCD)));
      const without = allSpecies().find((species) => species.group === group && !own.has(species.code));
      if (!without) continue;
      const { group: theirs, ...values } = coefficientRow(table, without, "", naturalStand) as unknown as Record<
        string,
        number
      >;
      expect(theirs).toBe(group);
      expect(values, `${table} ${group}`).toEqual(printedValues(row));
    }
  });

  it("keep the coefficients that print itself gives to three digits as they are printed", () => {
    const short = printedSpeciesRows.filter(({ row }) => Object.values(row).some((cell) => /E-/.test(cell)));
    expect(short.map((printed) => `${printed.table} ${printed.row.SPCD} ${printed.row.DIVISION}`)).toEqual([
      "barkVolume 12 130",
      "barkVolume 108 M330",
      "barkVolume 131 M230",
      "barkVolume 202 240",
      "barkVolume 242 340",
      "barkVolume 330 M220",
      "barkVolume 330 ",
    ]);
    expect(coefficientRow("barkVolume", findSpecies("202"), "240", naturalStand).a).toBe(3.19e-5);
  });

  it("know sums that were taken from the tables apart from any program of ours", () => {
    const sum = (table: string, name: string) =>
      printedSpeciesRows
        .filter((row) => row.table === table)
        .reduce((total, row) => total + (found(row)[name as "a"] ?? 0), 0);
    expect(sum("woodVolume", "a")).toBeCloseTo(SUMS.woodA, 9);
    expect(sum("insideRatio", "alpha")).toBeCloseTo(SUMS.insideAlpha, 9);
    expect(sum("biomass", "c")).toBeCloseTo(SUMS.biomassC, 9);
  });
});

/** Column sums, added up once from the tables with exact decimals, in another language. */
const SUMS = { woodA: 1.051795626, insideAlpha: 950.42035194, biomassC: 128.184435181 };

describe("the order in which a row is looked for", () => {
  const doug = findSpecies("202");
  const maple = findSpecies("red maple");

  it("takes the division's row, else the one of the species", () => {
    expect(coefficientRow("woodVolume", doug, "240", naturalStand).a).toBe(0.0019291);
    expect(coefficientRow("woodVolume", doug, "", naturalStand)).not.toEqual(
      coefficientRow("woodVolume", doug, "240", naturalStand),
    );
    expect(coefficientRow("woodVolume", maple, "M210", naturalStand)).toEqual(
      coefficientRow("woodVolume", maple, "", naturalStand),
    );
  });

  it("takes the group's row where the species has none, table by table", () => {
    const fir = findSpecies("fir spp.");
    expect(coefficientRow("woodVolume", fir, "", naturalStand).a).toBe(0.001955587);
    expect(coefficientRow("barkVolume", fir, "", naturalStand).a).toBe(0.008445325);
  });

  it("tells slash and loblolly pine apart by stand origin, natural where it is not said, and no other species", () => {
    const slash = findSpecies("slash pine");
    expect(coefficientRow("woodVolume", slash, "", naturalStand).a).toBe(0.001203979);
    expect(coefficientRow("woodVolume", slash, "", planted).a).toBe(0.001776285);
    expect(coefficientRow("woodVolume", findSpecies("131"), "220", naturalStand).a).toBe(0.00178627);
    expect(coefficientRow("woodVolume", findSpecies("131"), "220", planted).a).toBe(0.001143214);
    expect(coefficientRow("woodVolume", maple, "", planted)).toEqual(
      coefficientRow("woodVolume", maple, "", naturalStand),
    );
  });

  it("has nothing for woodland trees, and says so", () => {
    const woodland = allSpecies().filter(({ group }) => group === 10);
    expect(woodland.length).toBe(39);
    for (const species of woodland) {
      expect(() => coefficientRow("woodVolume", species, "", naturalStand)).toThrow(OutOfRange);
    }
    expect(() => coefficientRow("woodVolume", findSpecies("814"), "", naturalStand)).toThrow(
      "The national equations as published have no row for Gambel oak, a woodland tree.",
    );
  });
});

describe("divisions", () => {
  it("are those that the tables have", () => {
    const printed = new Set(printedSpeciesRows.map(({ division }) => division).filter((division) => division !== ""));
    expect([...divisions].sort()).toEqual([...printed].sort());
  });

  it.each([
    ["", ""],
    ["220", "220"],
    ["m210", "M210"],
    ["221", "220"],
    ["M332", "M330"],
    [" 242 ", "240"],
  ])('"%s" means "%s"', (text, division) => expect(divisionOf(text)).toBe(division));

  it.each(["999", "22", "M2100", "Ohio"])("%s is none", (text) => {
    expect(() => divisionOf(text)).toThrow(/^Division should be a Bailey ecodivision: 130, 210, .*\. You have ".*"\.$/);
  });
});
