import { describe, expect, it } from "vitest";
import { demoLayout } from "../../../src/demo/demoLayout";
import { demoPoints } from "../../../src/demo/demoPoints";
import { firstLayout } from "../../../src/pane/points/layoutState";
import { mapFrame, niceLength } from "../../../src/pane/points/mapFrame";
import { propose, sameGrid } from "../../../src/pane/points/proposal";
import { readCorners } from "../../../src/pane/points/readCorners";
import { gpxPoints, walkRows, wayToFirst } from "../../../src/pane/points/walk";
import { noLayout } from "../../../src/workbook/pointLayout";
import { plot } from "../../../src/workbook/tables";

const wanted = { acres: 32, points: 14 };
const reading = readCorners("0,0\n660,0\n660,660\n0,660", "feet");

describe("what the view would lay out", () => {
  it("is the demo's own grid while nothing is typed", () => {
    const { points, layout, problem } = propose(firstLayout, demoLayout, wanted);
    expect(problem).toBe("");
    expect(sameGrid(layout, demoLayout)).toBe(true);
    expect(layout.startCorner).toBe(1);
    expect(points.map(({ east, north }) => [Math.round(east * 10) / 10, Math.round(north * 10) / 10])).toEqual(
      demoPoints.map((row) => [row[plot.east], row[plot.north]]),
    );
  });

  it("takes the spacing from the acres of the outline and the points planned: sqrt(43560 x 10 / 9) = 220 ft", () => {
    const proposal = propose({ ...firstLayout, reading, drawn: 41 }, noLayout, { acres: 32, points: 9 });
    expect(proposal.acres).toBeCloseTo(10, 9);
    expect([proposal.layout.spacing, proposal.layout.seed, proposal.points.length]).toEqual([220, 41, 9]);
    expect(sameGrid(proposal.layout, noLayout)).toBe(false);
  });

  it("is nothing yet without an outline", () => {
    expect(propose(firstLayout, noLayout, wanted)).toMatchObject({
      points: [],
      acres: undefined,
      problem: "",
      problems: {},
    });
  });

  it("says beside each box what cannot be used", () => {
    const typed = { ...firstLayout, reading, spacing: "3", seed: "1.5", bearing: "west", pace: "40", place: "here" };
    expect(propose(typed, noLayout, wanted).problems).toEqual({
      spacing: 'Spacing should be between 10 and 5000 ft. You have "3".',
      seed: 'The seed should be a whole number above 0. You have "1.5".',
      bearing: 'The bearing should be between 0 and 360 degrees. You have "west".',
      pace: 'A pace should be between 1 and 10 ft. You have "40".',
      place: 'This needs a latitude and a longitude, such as 44.12345, -89.56789. You have "here".',
    });
    expect(propose({ ...firstLayout, reading, spacing: "4000", seed: "2" }, noLayout, wanted).problem).toBe(
      "No point falls inside; use a smaller spacing.",
    );
  });

  it("knows where 0, 0 lies when it is told, or when the outline has latitudes", () => {
    const placed = propose({ ...firstLayout, reading, place: "44.5 -89.5" }, noLayout, wanted);
    expect([placed.layout.latitude, placed.layout.longitude]).toEqual([44.5, -89.5]);
    const shown = placed.points.map((point, at) => ({ ...point, name: `${at + 1}`, visited: false }));
    const [first] = gpxPoints(shown, placed.layout);
    expect((first?.latitude ?? 0) - 44.5).toBeCloseTo((placed.points[0]?.north ?? 0) / 364_600, 5);
    expect(gpxPoints(shown, { ...placed.layout, latitude: null })).toEqual([]);
  });
});

describe("the walk", () => {
  const { points, layout } = propose({ ...firstLayout, declination: "10" }, demoLayout, wanted);
  const shown = points.map((point, at) => ({ ...point, name: `${at + 1}`, visited: false }));

  it("tells the way from each point to the next in degrees, feet, chains and paces", () => {
    const rows = walkRows(shown, layout);
    expect(rows[0]).toEqual(["1", "208", "147", "90°", "80°", "316", "4.79", "126"]);
    expect(rows[4]).toEqual(["5", "1,472", "147", "0°", "350°", "316", "4.79", "126"]);
    expect(rows.at(-1)).toEqual(["14", "1,156", "779", "", "", "", "", ""]);
  });

  it("begins at the nearest corner", () => {
    expect(wayToFirst(shown, layout)).toBe(
      "From corner 1 of the outline to point 1: 55°, 255 ft (3.9 chains, 102 paces).",
    );
  });
});

describe("the drawing", () => {
  it("has one scale both ways, north up, within its frame", () => {
    const { at, perFoot, width, height } = mapFrame(demoLayout.corners as never);
    const [[x0, y0], [x1, y1]] = [at({ east: 0, north: 0 } as never), at({ east: 300, north: 400 } as never)];
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(500 * perFoot, 9);
    expect(y1).toBeLessThan(y0);
    for (const corner of demoLayout.corners) {
      const [x, y] = at(corner as never);
      expect(x >= 0 && x <= width && y >= 0 && y <= height).toBe(true);
    }
  });

  it.each([
    [7, 5],
    [49, 20],
    [50, 50],
    [1999, 1000],
  ])("measures by a round length: %d becomes %d", (longest, nice) => expect(niceLength(longest)).toBe(nice));
});
