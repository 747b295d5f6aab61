import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BoardLine } from "../../../src/pane/boards/boardLine";
import { parseBoardLine } from "../../../src/pane/boards/parseBoardLine";
import { writeBoardLine } from "../../../src/pane/boards/writeBoardLine";

const board = (change: Partial<BoardLine> = {}): BoardLine => ({
  thickness: 1.25,
  width: 6,
  length: 12,
  pieces: 1,
  note: "",
  ...change,
});

describe("a legible line is a board", () => {
  it.each<[string, BoardLine]>([
    ["1.25 6 12", board()],
    ["1 1/4 6 12", board()],
    ["5/4 6 12", board()],
    ["4/4 6 12", board({ thickness: 1 })],
    ["8/4 6 12", board({ thickness: 2 })],
    ["3/4 6 12", board({ thickness: 0.75 })],
    ["5/4, 6, 12", board()],
    ["5/4 6 1/2 12", board({ width: 6.5 })],
    ["5/4 6 12 1/2", board({ length: 12.5 })],
    ["1 1/4 5 1/2 8 1/2 x3", board({ width: 5.5, length: 8.5, pieces: 3 })],
    ["5/4 6 12 x4", board({ pieces: 4 })],
    ["5/4 6 12 X4", board({ pieces: 4 })],
    ["x4 5/4 6 12", board({ pieces: 4 })],
    ["5/4 6 12 x4 /wane, 1/2 in", board({ pieces: 4, note: "wane, 1/2 in" })],
    ["6 1 12", board({ thickness: 6, width: 1 })],
  ])("%s", (text, expected) => {
    expect(parseBoardLine(text)).toEqual({ kind: "entry", entry: expected });
  });
});

describe("what is missing is told", () => {
  it.each([
    ["x4", "Type thickness, width and length first"],
    ["5/4", "Type the width in inches after 1.25 in."],
    ["5/4 6", "Type the length in feet after 1.25 x 6 in."],
    ["1 5/4 6 12", "12 is left over"],
    ["5/4 6 12 14", "14 is left over"],
    ["0 6 12", "should be above 0"],
    ["5/0 6 12", '"5/0" is not a number'],
    ["one 6 12", '"one" is not a number'],
    ["5/4 6 12 x0", 'You have "x0".'],
    ["5/4 6 12 x1.5", "whole number"],
    ["5/4 6 12 x", 'You have "x".'],
    ["5/4 6 12 x2 x3", "x is given twice"],
    ["/a note", "A note belongs to a board."],
  ])("%s", (text, because) => {
    const line = parseBoardLine(text);
    expect(line.kind === "unclear" && line.because).toContain(because);
  });

  it.each(["", "  ", ",", "/"])("a blank line is nothing: %j", (text) => {
    expect(parseBoardLine(text)).toEqual({ kind: "blank" });
  });
});

describe("whatever is typed", () => {
  const measure = fc.integer({ min: 1, max: 99_999 }).map((hundredths) => hundredths / 100);

  it("boards written as a line are read back as the same boards", () => {
    const anyBoard: fc.Arbitrary<BoardLine> = fc.record({
      thickness: measure,
      width: measure,
      length: measure,
      pieces: fc.integer({ min: 1, max: 999 }),
      note: fc.constantFrom("", "wane", "x4 and/or knots"),
    });
    fc.assert(
      fc.property(anyBoard, (given) => {
        expect(parseBoardLine(writeBoardLine(given))).toEqual({ kind: "entry", entry: given });
      }),
    );
  });

  it("a thickness in quarters is that many quarters of an inch", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), (quarters) => {
        const line = parseBoardLine(`${quarters}/4 6 12`);
        expect(line.kind === "entry" && line.entry.thickness).toBe(quarters / 4);
      }),
    );
  });

  it("reading never throws, and always says what it made of it", () => {
    const pieces = fc.constantFrom("1", "6.5", "1/4", "5/4", "/", "/n", "x", "x2", ",", " ", ".", "-", "1e9");
    const typed = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join(" ")),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const line = parseBoardLine(text);
        if (line.kind === "unclear") expect(line.because).toMatch(/\.$/);
        if (line.kind !== "entry") return;
        const { thickness, width, length, pieces: count } = line.entry;
        expect(Math.min(thickness, width, length, count)).toBeGreaterThan(0);
        expect(Number.isFinite(thickness * width * length * count)).toBe(true);
      }),
    );
  });
});
