import { describe, expect, it } from "vitest";
import { dbhOf, formClassOf, heightOf, insideOf, logsIn, ratioOf, stickMarks } from "../../src/pane/measure/measured";
import { firstMeasure, type MeasureForm } from "../../src/pane/measure/measureState";

const form = (change: Partial<MeasureForm>): MeasureForm => ({ ...firstMeasure, ...change });
const height = (distance: string, top: string, base: string, scale: string, slope = "") =>
  heightOf(form({ distance, top, base, scale, slope }));
const figure = (value: number, digits = 2) => ({ kind: "figure", value: expect.closeTo(value, digits) as number });

describe("the height of a tree, by all three scales", () => {
  // J. DeYoung, Forest Measurements, section 2.4: 82 ft, +41 and -13 percent; 66 ft, +41 and -9 topographic.
  it("is that of the textbook", () => {
    expect(height("82", "41", "-13", "Percent")).toEqual(figure(44.28));
    expect(height("66", "41", "-9", "Topo")).toEqual(figure(50));
  });

  // By hand: 100 (tan 40 + tan 5) = 83.91 + 8.749.
  it("takes degrees", () => {
    expect(height("100", "40", "-5", "Degrees")).toEqual(figure(92.659, 2));
  });

  // 100 ft along 30 percent are 95.78 ft level; by hand 95.78 x 0.92.
  it.each(["Percent", "Topo", "Degrees"])("takes the distance level on a slope, on the scale %s", (scale) => {
    const rise = { Percent: ["85", "-7"], Topo: ["56.1", "-4.62"], Degrees: ["40.3645", "-4.0042"] }[scale] ?? [];
    expect(height("100", rise[0] ?? "", rise[1] ?? "", scale, "30")).toEqual(figure(95.783 * 0.92, 1));
  });

  it("waits for what is missing and says what is wrong", () => {
    expect(height("66", "", "-7", "Percent")).toEqual({ kind: "waiting" });
    expect(height("66", "up", "-7", "Percent")).toEqual({ kind: "problem", because: '"up" is not a number.' });
    expect(height("66", "-9", "-7", "Percent")).toEqual({
      kind: "problem",
      because: "The top reading should be above the base reading.",
    });
  });

  it("comes to logs of 16 ft to the half", () => {
    expect(logsIn(42)).toBe(2.5); // as the Ohio leaflet counts 42 ft
    expect(logsIn(16.3)).toBe(1);
  });
});

describe("the other measures", () => {
  const list = [
    { code: "wo", name: "white oak", barkRatio: 0.9284766908852594 },
    { code: "zz", name: "other" },
  ];

  it("DBH from the girth is girth over pi", () => {
    expect(dbhOf(form({ girth: "44.9" }))).toEqual(figure(44.9 / Math.PI, 9));
  });

  it("the bark ratio is that of the species unless one was measured", () => {
    expect(ratioOf(form({ species: "wo" }), list)).toBe("0.928");
    expect(ratioOf(form({ species: "wo", ratio: "0.95" }), list)).toBe("0.95");
    expect(ratioOf(form({ species: "zz" }), list)).toBe("");
    expect(insideOf(form({ species: "wo", outside: "15" }), list)).toEqual(figure(15 * 0.928));
    expect(insideOf(form({ outside: "15", ratio: "9" }), list)).toMatchObject({ kind: "problem" });
  });

  it("form class is a share of DBH", () => {
    expect(formClassOf(form({ inside: "17.08", dbh: "21.9" }))).toEqual(figure(77.99)); // the encyclopedia's example
  });

  it("marks a Biltmore stick", () => {
    const marks = new Map(stickMarks(form({ reach: "25" })));
    expect(marks.get(20)).toEqual(figure(14.91));
    expect(marks.get(36)).toEqual(figure(23.05));
    expect(stickMarks(form({ reach: "x" }))[0]?.[1]).toEqual({ kind: "problem", because: '"x" is not a number.' });
  });
});
