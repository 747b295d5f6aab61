import { describe, expect, it } from "vitest";
import { startCorners } from "../../src/core/cruise/startCorners";
import { gridInOutline, outlineAcres, OutlineUnits, WalkFrom } from "../../src/functions/outline";
import { gridPoints } from "../../src/functions/plan";

const column = (...values: unknown[]) => values.map((value) => [value]);
const east = column(0, 660, 660, 0);
const north = column(0, 0, 660, 660);

describe("OUTLINEACRES", () => {
  it("is 10 acres for ten chains by ten, the first corner told again or not", () => {
    expect(outlineAcres(east, north)).toBeCloseTo(10, 12);
    expect(outlineAcres([...east, [0]], [...north, [0]])).toBeCloseTo(10, 12);
    expect(outlineAcres([...east, [""], [null]], [...north, [""], [null]])).toBeCloseTo(10, 12);
  });

  it("in metric is 4 hectares for 200 m by 200 m", () => {
    expect(outlineAcres(column(0, 200, 200, 0), column(0, 0, 200, 200), OutlineUnits.Metric)).toBeCloseTo(4, 12);
  });

  it("says what is wrong with the corners", () => {
    expect(() => outlineAcres(column(0, 660), column(0, 0))).toThrow("An outline needs 3 corners or more. You have 2.");
    expect(() => outlineAcres(column("", ""), column("", ""))).toThrow("You have 0.");
    expect(() => outlineAcres(column(0, 660, ""), column(0, 0, 660))).toThrow(
      "Corner 3 needs both its numbers, east and north.",
    );
    expect(() => outlineAcres(column(0, "x", 5), column(0, 0, 660))).toThrow("Corner 2 east needs a number");
    expect(() => outlineAcres(column(0, 660, 660, 0), column(0, 660, 0, 660))).toThrow("cross each other");
  });
});

describe("GRIDINOUTLINE", () => {
  it("has as many points as fit, each inside, one spacing apart, and tells the seed's grid again and again", () => {
    const table = gridInOutline(east, north, 220, 7);
    expect(table[0]).toEqual(["Point", "East", "North"]);
    expect(table).toHaveLength(10);
    for (const [, x, y] of table.slice(1) as number[][]) {
      expect((x ?? -1) > 0 && (x ?? 661) < 660 && (y ?? -1) > 0 && (y ?? 661) < 660).toBe(true);
    }
    expect(gridInOutline(east, north, 220, 7)).toEqual(table);
    expect(gridInOutline(east, north, 220, 8)).not.toEqual(table);
    expect(gridInOutline(east, north, 220)).toEqual(gridInOutline(east, north, 220, 1));
  });

  it("walks lines in the direction and from the corner asked for", () => {
    const [, first, second] = gridInOutline(east, north, 220, 7, 90, WalkFrom.NorthEast) as number[][];
    expect([first?.[1], second?.[1]].every((x) => (x ?? 0) > 220)).toBe(true);
    expect(first?.[2]).toBeCloseTo(second?.[2] ?? 0, 9);
    expect((first?.[1] ?? 0) - (second?.[1] ?? 0)).toBeCloseTo(220, 9);
  });

  it("is the grid over the rectangle when the outline is one", () => {
    const table = gridInOutline(east, north, 220, 7);
    const [x = 0, y = 0] = [table[1]?.[1], table[1]?.[2]] as number[];
    expect(table).toEqual(gridPoints(660, 660, 220, x, y));
  });

  it("says what is wrong", () => {
    expect(() => gridInOutline(east, north, "")).toThrow("Spacing needs a number, but the cell is blank.");
    expect(() => gridInOutline(east, north, 220, 1.5)).toThrow("The seed should be a whole number");
    expect(() => gridInOutline(east, north, 220, 1, 0, "the road" as never)).toThrow(
      'Walk from should be one of: South-west, South-east, North-west, North-east. You have "the road".',
    );
    expect(() => gridInOutline(column(0, 9, 9, 0), column(0, 0, 9, 9), 900, 1)).toThrow(
      expect.objectContaining({ code: "#N/A", message: "No point falls inside; use a smaller spacing." }),
    );
  });

  it("offers every corner there is", () => {
    expect(Object.values(WalkFrom)).toEqual(startCorners.map(({ title }) => title));
  });
});
