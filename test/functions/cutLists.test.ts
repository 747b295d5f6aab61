import { describe, expect, it } from "vitest";
import { CutListUnits, logsForCutList } from "../../src/functions/cutLists";

const logs = [
  ["Log", "Small end in", "Large end in", "Length ft"],
  [1, 10.8, 10.8, 8],
  [2, 6, 6, 8],
  [3, 10.8, 10.8, 8],
];
// A 10.8-in log gives three boards of 1 x 10 at a kerf of 1/8 in: see the cut list worked by hand for SAWPLAN.
const shelves = (count: number) => [
  ["Piece", "Thickness in", "Width in", "Length ft", "Count"],
  ["shelf", 1, 10, 8, count],
];

describe("LOGSFORCUTLIST", () => {
  it("takes logs until the list is met, counts no board twice, and leaves out a log that gives nothing", () => {
    const rows = logsForCutList(logs, shelves(4), 0.125).map((row) => row.map(rounded));
    expect(rows).toEqual([
      ["Log", "Pieces", "Board feet"],
      ["1", "3 of shelf", 20],
      ["3", "1 of shelf", 6.667],
      ["Still missing", "nothing", 0],
      ["No choice of these logs gives more than", "", 26.667],
    ]);
  });

  it("says what is missing, and that no choice of logs could give it", () => {
    const rows = logsForCutList(logs, shelves(8), 0.125).map((row) => row.map(rounded));
    expect(rows.slice(-2)).toEqual([
      ["Still missing", "2 of shelf", 13.333],
      ["No choice of these logs gives more than", "", 40],
    ]);
  });

  it("keeps to the mill, and reads metric units", () => {
    expect(logsForCutList(logs, shelves(4), 0.125, [["Longest log", 6]])[1]?.slice(0, 2)).toEqual([
      "Still missing",
      "4 of shelf",
    ]);
    const metric = logsForCutList(
      [["A", 27.5, 27.5, 2.5]],
      [["shelf", 2.54, 25.4, 2.4384, 3]],
      0.3175,
      undefined,
      CutListUnits.metric,
    );
    expect(metric[1]?.[1]).toBe("3 of shelf");
    expect(metric[1]?.[2]).toBeCloseTo(20, 9);
  });

  it("waits for logs and pieces, and says what is wrong in a sentence", () => {
    expect(logsForCutList([[null]], shelves(4), 0.125)[1]?.[0]).toBe("No logs yet");
    expect(logsForCutList(logs, [[null]], 0.125)[1]?.[0]).toBe("No pieces yet");
    expect(() => logsForCutList(logs, [["shelf", 1, 10, 8, 1.5]], 0.125)).toThrow("Count of piece 1 should be a whole");
    expect(() => logsForCutList(logs, [["shelf", 1, 10, "", 2]], 0.125)).toThrow("Length of piece 1 is missing.");
    expect(() => logsForCutList([[1, 12, 14]], shelves(4), 0.125)).toThrow("The list of logs needs 4 columns.");
    expect(() => logsForCutList([[1, 14, 12, 8]], shelves(4), 0.125)).toThrow("Ends swapped?");
  });
});

function rounded(cell: unknown): unknown {
  return typeof cell === "number" ? Number(cell.toFixed(3)) : cell;
}
