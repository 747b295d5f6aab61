import { describe, expect, it } from "vitest";
import { feet, inches } from "../../../../src/core/basis/units";
import { volumeForms } from "../../../../src/core/tree/national/forms";
import type { Coefficients, Kind } from "../../../../src/core/tree/national/forms/volumeForm";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import { anyStand, stemEquations } from "../../../../src/core/tree/national/stemEquations";
import { numberIn, published } from "../../../support/published";

const softwood: Kind = { name: "a softwood", softwood: true, woodGravity: 0.5 };
const hardwood: Kind = { name: "a hardwood", softwood: false, woodGravity: 0.6 };
const none: Coefficients = { a: NaN, b: NaN, c: NaN, a1: NaN, b1: NaN, c1: NaN };

function value(model: number, coefficients: Partial<Coefficients>, kind: Kind, dbh: number, height: number): number {
  const form = volumeForms.find((one) => one.model === model);
  if (!form) throw new Error(`no form ${model}`);
  return form.equation({ ...none, ...coefficients }, kind)(inches(dbh), feet(height));
}

// Whole powers, so that each can be worked out in the head.
describe("the five forms", () => {
  it("1: 0.002 x 10^2 x 50 = 10", () => {
    expect(value(1, { a: 0.002, b: 2, c: 1 }, softwood, 10, 50)).toBeCloseTo(10, 12);
  });

  it("2: the second power takes over at 9 in for softwoods and 11 in for hardwoods, without a step", () => {
    const two = { a: 0.001, b: 3, b1: 2, c: 1 };
    expect(value(2, two, softwood, 8, 10)).toBeCloseTo(0.001 * 512 * 10, 12);
    expect(value(2, two, softwood, 9, 10)).toBeCloseTo(0.001 * 729 * 10, 12);
    expect(value(2, two, softwood, 10, 10)).toBeCloseTo(0.001 * 9 * 100 * 10, 12);
    expect(value(2, two, hardwood, 10, 10)).toBeCloseTo(0.001 * 1000 * 10, 12);
    expect(value(2, two, hardwood, 12, 10)).toBeCloseTo(0.001 * 11 * 144 * 10, 12);
  });

  it("3: the power c1 belongs to the bracket alone", () => {
    // With b ln 2 / 10 the bracket is a half at 10 in; (1/2)^2 = 1/4 of a1 = 8 makes a square.
    const three = { a: 0.002, a1: 8, b: Math.log(2) / 10, c: 1, c1: 2 };
    expect(value(3, three, softwood, 10, 50)).toBeCloseTo(10, 9);
    // Taken over a1 as well, the power would be 16 and the volume astronomical.
    expect(value(3, three, softwood, 10, 50)).toBeLessThan(11);
  });

  it("4: damped by exp(-b1 D)", () => {
    expect(value(4, { a: 0.004, b: 2, c: 1, b1: Math.log(2) / 10 }, softwood, 10, 50)).toBeCloseTo(10, 12);
  });

  it("5: in proportion to the density of the wood, and none without it", () => {
    expect(value(5, { a: 0.002, b: 2, c: 1 }, hardwood, 10, 50)).toBeCloseTo(6, 12);
    expect(() => value(5, { a: 0.002, b: 2, c: 1 }, { ...hardwood, woodGravity: undefined }, 10, 50)).toThrow(
      "The national species list has no wood density for a hardwood.",
    );
  });

  it("are all that the tables use", () => {
    const tables = ["woodVolume", "barkVolume", "outsideVolume", "biomass"];
    const used = new Set(
      tables.flatMap((table) =>
        ["species", "group"].flatMap((kind) =>
          published(`tree/national/${table}.${kind}.csv`).rows.map((row) => numberIn(row, "model")),
        ),
      ),
    );
    expect([...used].sort()).toEqual(volumeForms.map(({ model }) => model));
  });
});

it("form 3 does not let the volume of a hickory-oak row collapse: 800 stays beside its group", () => {
  const tree = { dbh: inches(14), height: feet(70) };
  const oak = stemEquations(findSpecies("800"), anyStand).wood(tree);
  const likeIt = stemEquations(findSpecies("white oak"), anyStand).wood(tree);
  expect(oak / likeIt).toBeGreaterThan(0.8);
  expect(oak / likeIt).toBeLessThan(1.25);
});

it("wood and bark are added up; the equation outside bark only feeds the taper", () => {
  const tree = { dbh: inches(20), height: feet(110) };
  const equations = stemEquations(findSpecies("202"), { ...anyStand, division: "240" });
  expect(equations.outside(tree)).not.toBeCloseTo(equations.wood(tree) + equations.bark(tree), 1);
});
