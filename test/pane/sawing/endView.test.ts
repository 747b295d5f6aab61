import { describe, expect, it } from "vitest";
import { endViewOf, middleOf } from "../../../src/pane/sawing/endView";
import { sayStep, stepsOf } from "../../../src/pane/sawing/sawSteps";

describe("the end view from a layout", () => {
  const gap = ["", "", "", ""];
  const rows = [
    [5, 0, "Small end", ""],
    [-5, 0, "Small end", ""],
    gap,
    [-3, 1, "1: 1 x 6 x 16", "flat"],
    [3, 1, "1: 1 x 6 x 16", "flat"],
    [3, 2, "1: 1 x 6 x 16", "flat"],
    [-3, 2, "1: 1 x 6 x 16", "flat"],
    ["#N/A", "#N/A", "", ""],
    [-3, -0.25, "2: 1 x 6 x 16", "rift"],
    [3, 0.75, "2: 1 x 6 x 16", "rift"],
  ];

  it("parts the ends of the log from its boards, across blank gaps and error gaps", () => {
    const { ends, boards, reach } = endViewOf(rows);
    expect(ends.map(({ piece }) => piece)).toEqual(["Small end"]);
    expect(boards.map(({ number, grain, corners }) => [number, grain, corners.length])).toEqual([
      [1, "flat", 4],
      [2, "rift", 2],
    ]);
    expect(reach).toBe(5);
  });

  it("numbers a board in its middle, no larger than its thinner side", () => {
    const [first] = endViewOf(rows).boards;
    if (!first) throw new Error("There is no board.");
    expect(middleOf(first)).toEqual({ x: 0, y: 1.5, room: 1 });
  });

  it("is empty for a log that is not measured", () => {
    expect(endViewOf([["No log yet", "", "", ""]])).toEqual({
      ends: [],
      boards: [],
      reach: 0,
    });
  });
});

describe("the steps of a cut list", () => {
  const steps = stepsOf([
    [1, "none, small end raised 1 in", 9.5, "slab", "", ""],
    [2, "none", 8.25, "1 x 6 x 16 + 1 x 4 x 12", 12, ""],
    [3, "half turn", 7.125, "half", "", ""],
    [4, "none, left on the bed", "", "2 x 6 x 16", 16, ""],
    [5, "edge", "", "1 flitch to 6 + 4 in", "", ""],
  ]);

  it("number the boards as they are freed, as the end view does; slabs, halves and edging free none", () => {
    expect(steps.map(({ boards }) => boards)).toEqual([[], [1, 2], [], [3], []]);
  });

  it("are told in words with their head reading", () => {
    expect(steps.map((step) => sayStep(step, "in"))).toEqual([
      "Turn: none, small end raised 1 in. Head reading 9.5 in. Frees slab.",
      "Head reading 8.25 in. Frees 1 x 6 x 16 + 1 x 4 x 12 (boards 1, 2).",
      "Turn: half turn. Head reading 7.125 in. Frees half.",
      "Left on the bed: 2 x 6 x 16 (board 3).",
      "At the edger: 1 flitch to 6 + 4 in.",
    ]);
  });

  it("are none while the sheet says that no log is measured", () => {
    expect(stepsOf([["No log yet", "", "", "", "", ""]])).toEqual([]);
  });
});
