import { describe, expect, it } from "vitest";
import { feet, inches, type Feet } from "../../../../src/core/basis/units";
import { barkSides } from "../../../../src/core/tree/national/barkSides";
import { divisionOf } from "../../../../src/core/tree/national/divisions";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import { naturalStand } from "../../../../src/core/tree/national/standOrigins";
import { stemDiameter } from "../../../../src/core/tree/national/stemDiameter";
import { anyStand, stemEquations } from "../../../../src/core/tree/national/stemEquations";
import {
  cumulativeShare,
  heightToDiameter,
  stemDiameterAt,
  type Shape,
} from "../../../../src/core/tree/national/taper";
import { expectAsPrinted } from "../../../support/expectAsPrinted";
import { numberIn, published } from "../../../support/published";
import { found, nameOf, printedSpeciesRows } from "./nationalTables";

const computed = published("tree/national/taper.csv");
const [inside, outside] = barkSides as [(typeof barkSides)[0], (typeof barkSides)[0]];

describe("the stem curve, against an independent computation", () => {
  it.each(computed.rows.map((row) => [row.species, row.h, row] as const))("%s at %s ft", (_, __, row) => {
    const equations = stemEquations(findSpecies(row.spcd ?? ""), {
      division: divisionOf(row.division ?? ""),
      origin: naturalStand,
    });
    const tree = { dbh: inches(numberIn(row, "dbh")), height: feet(numberIn(row, "height")) };
    const h = feet(numberIn(row, "h"));
    expectAsPrinted(stemDiameter(equations, tree, h, outside), numberIn(row, "dob"), computed.printedTo);
    expectAsPrinted(stemDiameter(equations, tree, h, inside), numberIn(row, "dib"), computed.printedTo);
    expectAsPrinted(cumulativeShare(h, tree.height, equations.shapeInside), numberIn(row, "ratio"), 0.000001);
  });
});

describe("the curve and the share of volume", () => {
  const equations = stemEquations(findSpecies("white oak"), anyStand);
  const tree = { dbh: inches(18.1), height: feet(65) };
  const volume = equations.wood(tree);

  it("say the same: sections one inch long, added up, are the volume", () => {
    let sum = 0;
    const step = 1 / 120;
    for (let h = step / 2; h < tree.height; h += step) {
      sum += 0.005454154 * stemDiameterAt(feet(h), tree.height, volume, equations.shapeInside) ** 2 * step;
    }
    // The curve runs off to infinity at the ground, so that the lowest sections are a little short.
    expect(sum / volume).toBeCloseTo(1, 3);
  });

  it("run from nothing at the ground to everything at the tip", () => {
    const share = (h: number) => cumulativeShare(feet(h), tree.height, equations.shapeInside);
    expect(share(0)).toBe(0);
    expect(share(65)).toBe(1);
    expect(stemDiameter(equations, tree, tree.height, inside)).toBe(0);
  });

  it("end at the tip and near the ground", () => {
    expect(() => stemDiameter(equations, tree, feet(66), inside)).toThrow(
      "At height should be between 0.1 and 65 ft. You have 66.",
    );
    expect(() => stemDiameter(equations, tree, feet(0), inside)).toThrow("At height should be between 0.1 and 65 ft.");
  });
});

/** The plainest way to solve a falling curve, sixty halvings. */
function byHalving(diameter: number, height: Feet, volume: number, shape: Shape): number {
  let [low, high] = [1e-9, height as number];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (stemDiameterAt(feet(middle), height, volume, shape) > diameter) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe("the height of a diameter", () => {
  const shapes = printedSpeciesRows.filter(({ table }) => table === "outsideRatio" || table === "insideRatio");

  it.each(shapes.map((row) => [nameOf(row), row.table, row] as const))("%s, %s, as by halving", (_, __, row) => {
    const { alpha = NaN, beta = NaN } = found(row);
    for (const [height, volume, diameter] of [
      [38, 11, 4],
      [38, 11, 9],
      [80, 60, 4],
      [110, 100, 17],
      [200, 1500, 0.5],
    ] as const) {
      if (beta > 1 && diameter === 9) continue; // rises first, so that halving is no judge
      const solved = heightToDiameter(inches(diameter), feet(height), volume, { alpha, beta });
      expect(solved).toBeCloseTo(byHalving(diameter, feet(height), volume, { alpha, beta }), 6);
    }
  });

  it("is found close to the ground, and is 0 where the stem is nowhere so thick", () => {
    const swelling = { alpha: 2.2, beta: 0.9 };
    const thick = heightToDiameter(inches(14), feet(38), 11, swelling);
    expect(thick).toBeGreaterThan(0);
    expect(stemDiameterAt(thick, feet(38), 11, swelling)).toBeCloseTo(14, 6);
    expect(heightToDiameter(inches(40), feet(38), 11, { alpha: 2.2, beta: 1.03 })).toBe(0);
  });
});
