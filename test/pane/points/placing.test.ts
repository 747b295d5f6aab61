import { describe, expect, it } from "vitest";
import { feet } from "../../../src/core/basis/units";
import type { MappedPlot } from "../../../src/pane/job/readMapped";
import { named, placing, placingInWords } from "../../../src/pane/points/placing";

const at = (east: number, north: number) => ({ east: feet(east), north: feet(north) });
const points = [at(100.04, 50), at(200, 50), at(300, 50)];
const plot = (row: number, rest: Partial<MappedPlot> = {}): MappedPlot => ({
  row,
  name: String(row + 1),
  east: null,
  north: null,
  visited: false,
  ...rest,
});
const visited = (one: MappedPlot) => one.visited;

describe("giving points to plots", () => {
  it("fills plots without a place in their order, to the tenth of a foot, and tells which are left over", () => {
    const plan = placing(
      points,
      [0, 1, 2, 3].map((row) => plot(row)),
      visited,
      [],
    );
    expect(plan.updates).toEqual([
      { row: 0, east: 100, north: 50 },
      { row: 1, east: 200, north: 50 },
      { row: 2, east: 300, north: 50 },
    ]);
    expect([plan.names, plan.appends, plan.kept, plan.spare]).toEqual([["1", "2", "3"], [], [], ["4"]]);
    expect(placingInWords(plan)).toEqual([
      "3 points of the sheet Points get their place.",
      "Point 4 has no place on this grid: take it off the sheet Points, or lay a closer grid.",
    ]);
  });

  it("never touches a plot that was visited, or has a place of its own, and numbers new ones on", () => {
    const plots = [plot(0, { visited: true }), plot(1, { east: 7, north: 8 }), plot(2), plot(3, { east: 9 })];
    const plan = placing(points, plots, visited, []);
    expect(plan.updates).toEqual([{ row: 2, east: 100, north: 50 }]);
    expect(plan.appends).toEqual([
      { name: 5, east: 200, north: 50 },
      { name: 6, east: 300, north: 50 },
    ]);
    expect([plan.names, plan.kept]).toEqual([
      ["3", "5", "6"],
      ["1", "2", "4"],
    ]);
    expect(placingInWords(plan)).toEqual([
      "1 point of the sheet Points gets its place.",
      "2 points are added, from 5 on.",
      "Points 1, 2 and 4 were visited or placed by hand and stay as they are.",
    ]);
  });

  it("moves what the grid before had placed and no one has visited, and clears what is then left over", () => {
    const before = [at(11.04, 20), at(31, 20), at(51, 20), at(71, 20)];
    const plots = before.map(({ east, north }, row) =>
      plot(row, { east: Math.round(east * 10) / 10, north, visited: row === 1 }),
    );
    const plan = placing(points.slice(0, 2), plots, visited, before);
    expect(plan.updates).toEqual([
      { row: 0, east: 100, north: 50 },
      { row: 2, east: 200, north: 50 },
      { row: 3, east: null, north: null },
    ]);
    expect([plan.moved, plan.kept, plan.spare]).toEqual([["1", "3", "4"], ["2"], ["4"]]);
  });

  it("starts from 1 in a table without plots, whatever other names there are", () => {
    expect(placing(points, [], visited, []).appends[0]?.name).toBe(1);
    expect(placing(points, [plot(0, { name: "A", visited: true })], visited, []).names).toEqual(["1", "2", "3"]);
  });

  it("names not more than a few", () => {
    expect(named(["3"])).toBe("Point 3");
    expect(named(["1", "2", "3", "4", "5", "6", "7"])).toBe("7 points (1, 2, 3 ... 7)");
  });
});
