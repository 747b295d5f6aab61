import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { faceWidth, lengthOfFace, reachOfFace, slabDepth } from "../../../src/core/sawing/chord";
import { diameterAt, requireSawLog, solidVolume } from "../../../src/core/sawing/sawLog";
import { grainOf, ringAngle } from "../../../src/core/sawing/grain";
import { grainCounts } from "../../../src/core/sawing/grainCounts";
import type { SawPlan } from "../../../src/core/sawing/sawingPattern";
import { outline } from "../../../src/core/sawing/outline";
import { lying } from "../../../src/core/sawing/lyingLog";
import { woodIn } from "../../../src/core/sawing/woodIn";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";
import { sawLog } from "../../support/sawing";

const chords = published("sawing/chord.csv");
const slabs = published("sawing/slabDepth.csv");
const faces = published("sawing/lengthOfFace.csv");
const cones = published("sawing/taperedLog.csv");

const woodBetween = (log: ReturnType<typeof sawLog>, lower: number, upper: number) =>
  woodIn(lying(log), outline(-Infinity, Infinity, lower, upper));

describe("geometry of a log", () => {
  it.each(chords.rows)("a plane $from pith in from the pith of a $diameter-in log opens $face width in", (row) => {
    const width = faceWidth(inches(numberIn(row, "diameter")), inches(numberIn(row, "from pith")));
    expectAsPrinted(width, numberIn(row, "face width"), chords.printedTo);
  });

  it.each(slabs.rows)("a $face-in face on a $diameter-in log lies $slab depth in deep", (row) => {
    const depth = slabDepth(inches(numberIn(row, "diameter")), inches(numberIn(row, "face")));
    expectAsPrinted(depth, numberIn(row, "slab depth"), slabs.printedTo);
  });

  it.each(faces.rows)("a $width-in face, $from pith in from the pith, runs $length from the large end ft", (row) => {
    const smallEnd = numberIn(row, "small end");
    const length = lengthOfFace(
      sawLog(smallEnd, smallEnd + 2, 16),
      inches(numberIn(row, "from pith")),
      inches(numberIn(row, "width")),
    );
    expectAsPrinted(length, numberIn(row, "length from the large end"), faces.printedTo);
  });

  it.each(cones.rows)("a log of $small end to $large end in holds $log volume ft3", (row) => {
    const log = sawLog(numberIn(row, "small end"), numberIn(row, "large end"), numberIn(row, "length"));
    expectAsPrinted(solidVolume(log), numberIn(row, "log volume"), cones.printedTo);
  });

  it("a face that fits at the small end runs the whole length, one wider than the large end runs none", () => {
    const log = sawLog(12, 14, 16);
    expect(lengthOfFace(log, inches(5), inches(4))).toBe(16);
    expect(lengthOfFace(log, inches(7), inches(1))).toBe(0);
    expect(diameterAt(log, 16)).toBe(12);
  });

  it("refuses a face wider than the log, and a log whose ends are swapped", () => {
    expect(() => reachOfFace(inches(8), inches(9))).toThrow(OutOfRange);
    expect(() => requireSawLog(sawLog(14, 12, 16))).toThrow(/Ends swapped/);
    expect(() => requireSawLog(sawLog(12, 14, NaN))).toThrow(InvalidInput);
  });

  it("finds the whole log between its bark lines, and half of it above the pith", () => {
    for (const log of [sawLog(12, 12, 8), sawLog(12, 14, 16), sawLog(6, 30, 20)]) {
      expect(woodBetween(log, -40, 40)).toBeCloseTo(solidVolume(log), 6);
      expect(woodBetween(log, 0, 40)).toBeCloseTo(solidVolume(log) / 2, 6);
    }
  });

  it("counts the wood of a kerf as a fine sum over the log does", () => {
    const log = sawLog(10, 13, 12);
    let sum = 0;
    const steps = 2000;
    for (let i = 0; i < steps; i += 1) {
      const radius = diameterAt(log, ((i + 0.5) * 12) / steps) / 2;
      for (let j = 0; j < 20; j += 1) {
        const y = 5.1 + ((j + 0.5) * 0.25) / 20;
        if (y < radius) sum += 2 * Math.sqrt(radius ** 2 - y ** 2) * (0.25 / 20) * (12 / steps);
      }
    }
    expect(woodBetween(log, 5.1, 5.35)).toBeCloseTo(sum / 144, 3);
  });

  it("counts the wood inside a rectangle of the end view as a fine sum over the log does, and halves it by symmetry", () => {
    const log = sawLog(10, 13, 12);
    const [left, right, lower, upper] = [-1.5, 6, 0.5, 4.25];
    let sum = 0;
    const [steps, cells] = [200, 150];
    for (let i = 0; i < steps; i += 1) {
      const radius = diameterAt(log, ((i + 0.5) * 12) / steps) / 2;
      for (let j = 0; j < cells; j += 1) {
        const y = lower + ((j + 0.5) * (upper - lower)) / cells;
        const half = Math.sqrt(radius ** 2 - y ** 2);
        sum += (Math.min(right, half) - Math.max(left, 0 - half)) * ((upper - lower) / cells) * (12 / steps);
      }
    }
    expect(woodIn(lying(log), outline(left, right, lower, upper))).toBeCloseTo(sum / 144, 4);
    expect(woodIn(lying(log), outline(0, Infinity, -Infinity, 0))).toBeCloseTo(solidVolume(log) / 4, 6);
    expect(woodIn(lying(log), outline(7, 8, -1, 1))).toBeCloseTo(0, 9);
  });
});

describe("grain of a board by where it lies", () => {
  const round = { u: 0, v: 0, a: 8, b: 8 };

  it("meets the rings at a right angle beside the pith, not at all above it, at 45 degrees as far across as up", () => {
    expect(ringAngle(outline(2, 8, -0.5, 0.5), round)).toBe(90);
    expect(ringAngle(outline(-3, 3, 4, 5), round)).toBe(0);
    expect(ringAngle(outline(2, 8, 4.5, 5.5), round)).toBeCloseTo(45, 9);
    // Stood on edge, the wide face runs up: what was across counts as up.
    expect(ringAngle(outline(4.5, 5.5, 2, 8), round)).toBeCloseTo(45, 9);
  });

  it("meets the rings of an oval log as the line that touches an ellipse through its middle does", () => {
    const oval = { u: 0.5, v: -0.25, a: 9, b: 6 };
    const board = outline(3, 8, 2, 3);
    // The ellipse of the log's shape through the board's middle, a little farther along it to either side.
    const [x, y] = [5.5 - oval.u, 2.5 - oval.v];
    const size = Math.hypot(x / oval.a, y / oval.b);
    const heightAt = (across: number) => oval.b * Math.sqrt(size ** 2 - (across / oval.a) ** 2);
    const slope = (heightAt(x + 1e-5) - heightAt(x - 1e-5)) / 2e-5;
    expect(ringAngle(board, oval)).toBeCloseTo((Math.atan(Math.abs(slope)) * 180) / Math.PI, 5);
  });

  it("has its name from 30 and from 60 degrees on, and is counted", () => {
    const lies = lying(sawLog(20, 20, 8));
    const size = { thickness: inches(1), width: inches(4), length: feet(8) };
    const grain = (...[left, right, lower, upper]: [number, number, number, number]) => ({
      piece: size,
      outline: outline(left, right, lower, upper),
    });
    const boards = [grain(1, 5, -0.5, 0.5), grain(-2, 2, 4, 5), grain(3, 7, 4.5, 5.5), grain(-2, 2, -0.5, 0.5)];
    expect(boards.map((one) => grainOf(one, lies))).toEqual(["quarter", "flat", "rift", "flat"]);
    const flitch = { boards } as unknown as SawPlan["flitches"][number];
    const bf = (4 * 8) / 12;
    expect(grainCounts({ flitches: [flitch], lying: lies })).toEqual([
      { grain: "quarter", boards: 1, boardFeet: bf },
      { grain: "rift", boards: 1, boardFeet: bf },
      { grain: "flat", boards: 2, boardFeet: 2 * bf },
    ]);
  });
});
