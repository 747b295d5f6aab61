import { describe, expect, it } from "vitest";
import { sayCut, stepsOf, unitsOf } from "../../../src/pane/bucking/buckSteps";
import { rulerOf, stemSideOf } from "../../../src/pane/bucking/stemSide";
import { buckPlan } from "../../../src/functions/bucking";

/** Invented products; rot that leaves a gap between the logs. */
const answer = buckPlan("white oak", 20, 80, [["Sawlog", 8, 8, 16, 2, "Doyle", 400]], 1, 0.33, [[20]], [[24]]) as (
  string | number
)[][];
const steps = stepsOf(answer.slice(1));
const units = unitsOf(answer[0] ?? []);

describe("the plan as the pane reads it", () => {
  it("has the units of the headings and a step for each log", () => {
    expect(units).toEqual({ distance: "ft", diameter: "in", volume: "bf" });
    expect(steps.length).toBe(answer.length - 1);
    expect(steps[0]).toMatchObject({ number: 1, product: "Sawlog", from: 1 });
    expect(stepsOf([["No trees yet", "", "", "", "", "", "", "", ""]])).toEqual([]);
  });

  it("is told cut by cut, measured from the butt", () => {
    const first = { number: 1, product: "Sawlog", from: 1, to: 17.33, length: 16, largeEnd: 24, smallEnd: 15.98 };
    expect(sayCut({ ...first, volume: 144, value: 57.6 }, 1, units)).toBe(
      "Sawlog, 16.0 ft: from 0.0 to 16.3 ft above the butt cut. Small end 16.0 in, 144 bf, $57.60.",
    );
  });
});

describe("the side view of a stem", () => {
  const { pieces, top, thickest } = stemSideOf(steps, 80);

  it("lies end on end from the ground to the tip, gaps and all", () => {
    expect(pieces[0]).toMatchObject({ log: 0, from: 0, to: 1 });
    pieces.forEach((piece, i) => {
      const next = pieces[i + 1];
      if (next) expect(next.from).toBeCloseTo(piece.to, 9);
    });
    expect(pieces.at(-1)).toMatchObject({ log: 0, to: 80, smallEnd: 0 });
    expect(top).toBe(80);
    expect(pieces.filter(({ log }) => log > 0).map(({ log }) => log)).toEqual(steps.map(({ number }) => number));
    expect(pieces.some(({ log, from, to }) => log === 0 && from <= 20.001 && to >= 23.999)).toBe(true);
  });

  it("is as thick at each cut as the sheet says", () => {
    for (const step of steps) {
      const piece = pieces.find(({ log }) => log === step.number);
      expect([piece?.largeEnd, piece?.smallEnd]).toEqual([step.largeEnd, step.smallEnd]);
    }
    expect(thickest).toBe(Math.max(...steps.map(({ largeEnd }) => largeEnd)));
  });

  it("ends with the last log where only logs were counted, and is nothing without logs", () => {
    expect(stemSideOf(steps, undefined).pieces.at(-1)?.log).toBe(steps.at(-1)?.number);
    expect(stemSideOf([], 80).pieces).toEqual([]);
  });

  it.each([
    [84, [0, 20, 40, 60, 80]],
    [50, [0, 10, 20, 30, 40, 50]],
    [12, [0, 2, 4, 6, 8, 10, 12]],
    [25.6, [0, 5, 10, 15, 20, 25]],
  ])("has a ruler of whole steps up to %s", (height, marks) => expect(rulerOf(height)).toEqual(marks));
});
