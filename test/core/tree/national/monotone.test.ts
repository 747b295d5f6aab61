import { describe, expect, it } from "vitest";
import { feet, inches, type Feet, type Inches } from "../../../../src/core/basis/units";
import { barkSides } from "../../../../src/core/tree/national/barkSides";
import { allSpecies } from "../../../../src/core/tree/national/species";
import { stemDiameter } from "../../../../src/core/tree/national/stemDiameter";
import { anyStand, equationOf, stemEquations } from "../../../../src/core/tree/national/stemEquations";
import { found, nameOf, printedSpeciesRows, type PrintedRow } from "./nationalTables";

const WOODLAND = 10; // the group that has no equations

/** The size of trees that a woodlot holds. The range that each row was fitted over is not printed with the tables. */
const DIAMETERS = Array.from({ length: 79 }, (_, i) => inches(1 + i / 2));
const HEIGHTS = Array.from({ length: 29 }, (_, i) => feet(10 + 5 * i));

type Equation = (dbh: Inches, height: Feet) => number;

const grows = (values: readonly number[]) => values.every((value, i) => i === 0 || value > (values[i - 1] as number));
const growsWithDiameter = (of: Equation) => grows(DIAMETERS.map((dbh) => of(dbh, feet(60))));
const growsWithHeight = (of: Equation) => grows(HEIGHTS.map((height) => of(inches(12), height)));

const rowsOf = (table: string) => printedSpeciesRows.filter((row) => row.table === table);
const failing = (table: string, good: (of: Equation) => boolean) =>
  rowsOf(table)
    .filter((printed) => !good(equationOf(found(printed), printed.species)))
    .map((printed: PrintedRow) => `${printed.row.SPCD} ${nameOf(printed)}`);

/** Where the printed rows themselves turn down: the equation of bark, and one of weight, in a tree that only grows taller. */
const SHRINKS_WITH_DIAMETER: Readonly<Record<string, readonly string[]>> = {
  barkVolume: ["806 scarlet oak 220", "832 chestnut oak 220"],
};

const SHRINKS_WITH_HEIGHT: Readonly<Record<string, readonly string[]>> = {
  barkVolume: [
    "97 red spruce 130",
    "105 jack pine 220",
    "110 shortleaf pine 220",
    "122 ponderosa pine 330",
    "129 eastern white pine 220",
    "131 loblolly pine 220 natural",
    "242 western redcedar M240",
    "242 western redcedar",
    "263 western hemlock M240",
    "316 red maple 220",
    "375 paper birch 220",
    "461 sugarberry 230",
    "461 sugarberry",
    "555 loblolly-bay 230",
    "555 loblolly-bay",
    "621 yellow-poplar 220",
    "693 blackgum 220",
    "742 eastern cottonwood",
    "802 white oak 220",
    "832 chestnut oak 220",
  ],
  biomass: ["317 silver maple"],
};

describe.each(["woodVolume", "barkVolume", "outsideVolume", "biomass"])("every printed row of %s", (table) => {
  it("grows with the diameter, but for the rows named", () => {
    expect(failing(table, growsWithDiameter)).toEqual(SHRINKS_WITH_DIAMETER[table] ?? []);
  });

  it("grows with the height, but for the rows named", () => {
    expect(failing(table, growsWithHeight)).toEqual(SHRINKS_WITH_HEIGHT[table] ?? []);
  });
});

describe("every species of the list, at large", () => {
  const trees = allSpecies().filter(({ group }) => group !== WOODLAND);

  it("has more wood, and more wood and bark together, when it is thicker or taller; loblolly-bay thins its bark too fast", () => {
    const turned = trees.filter((species) => {
      const { wood, bark } = stemEquations(species, anyStand);
      const both: Equation = (dbh, height) => wood({ dbh, height }) + bark({ dbh, height });
      return ![growsWithDiameter, growsWithHeight].every(
        (good) => good((dbh, height) => wood({ dbh, height })) && good(both),
      );
    });
    expect(turned.map(({ name }) => name)).toEqual(["loblolly-bay"]);
  });

  it("tapers from 1 ft to the tip, inside bark and outside", () => {
    const tree = { dbh: inches(16), height: feet(75) };
    const heights = Array.from({ length: 75 }, (_, i) => feet(75 - i));
    const turned = trees.filter((species) => {
      const equations = stemEquations(species, anyStand);
      return !barkSides.every((side) => grows(heights.map((h) => stemDiameter(equations, tree, h, side))));
    });
    expect(turned.map(({ name }) => name)).toEqual([]);
  });
});

it("of all stem shapes only ponderosa pine of division M340 swells before it tapers", () => {
  const shapes = printedSpeciesRows.filter(({ table }) => table === "insideRatio" || table === "outsideRatio");
  const swelling = shapes.filter((row) => (found(row).beta ?? 0) > 1);
  expect(swelling.map(nameOf)).toEqual(["ponderosa pine M340", "ponderosa pine M340"]);
});
