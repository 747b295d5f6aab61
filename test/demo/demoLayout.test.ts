import { describe, expect, it } from "vitest";
import { feet } from "../../src/core/basis/units";
import { gridInOutline } from "../../src/core/cruise/gridInOutline";
import { isInside, outlineAcres } from "../../src/core/cruise/outline";
import { startCorners } from "../../src/core/cruise/startCorners";
import { demoLayout } from "../../src/demo/demoLayout";
import { demoPoints } from "../../src/demo/demoPoints";
import { demoContent } from "../../src/demo/demoWorkbook";
import { toTenth } from "../../src/workbook/pointLayout";
import { plot } from "../../src/workbook/tables";

const outline = demoLayout.corners.map(({ east, north }) => ({ east: feet(east), north: feet(north) }));

describe("the demo's tract", () => {
  it("has 32 acres within a tenth, as Setup says", () => {
    expect(Math.abs(outlineAcres(outline) - (demoContent.settings.acres ?? 0))).toBeLessThan(0.1);
  });

  it("has the very points that its seed gives, fourteen of them", () => {
    const from = startCorners.find(({ title }) => title === demoLayout.from);
    const grid = gridInOutline(outline, {
      spacing: feet(demoLayout.spacing ?? 0),
      seed: demoLayout.seed ?? 0,
      bearing: demoLayout.bearing,
      ...(from && { from }),
    });
    expect(grid).toHaveLength(14);
    expect(demoPoints.map((row) => [row[plot.east], row[plot.north]])).toEqual(
      grid.map(({ east, north }) => [toTenth(east), toTenth(north)]),
    );
    for (const point of grid) expect(isInside(outline, point)).toBe(true);
  });

  it("says that it is invented", () => expect(demoLayout.source).toMatch(/^Invented/));
});
