import { describe, expect, it } from "vitest";
import { equalBoardsOf, type EqualBoardsForm } from "../../../src/pane/sawing/equalBoards";

const form = (start: string, thickness: string, boards: string): EqualBoardsForm => ({ start, thickness, boards });
const plain = { kerf: 0.09, mill: {}, unit: "in" };
const sixteenths = { ...plain, mill: { scaleStep: 1 / 16 } };

describe("a stack of equal boards at the pane", () => {
  it("counts down by a board and a kerf where the head stops anywhere", () => {
    // 12.4375 - 1.215 = 11.2225, and so on.
    expect(equalBoardsOf(form("12 7/16", "1 1/8", "3"), plain)).toEqual({
      kind: "settings",
      boards: "3 boards, 1.125 in thick",
      onBed: "8.793 in",
      cuts: ["11.223 in", "10.008 in", "8.793 in"],
    });
  });

  it("reads the marks of the mill's scale as they stand on it", () => {
    // 1.125 + 0.09 is 19.44 sixteenths, so every cut is 20 of them lower, and boards are 1.25 - 0.09 thick.
    expect(equalBoardsOf(form("12 7/16", "1.125", "3"), sixteenths)).toEqual({
      kind: "settings",
      boards: "3 boards, 1.16 in thick",
      onBed: "8 11/16 in",
      cuts: ["11 3/16 in", "9 15/16 in", "8 11/16 in"],
    });
    // Opened between two marks, the first board gives what is left over: 12.5 - 11.25 - 0.09, and 12.52 - 11.25 - 0.09.
    expect(equalBoardsOf(form("12.52", "1.125", "2"), sixteenths)).toMatchObject({
      boards: "2 boards, 1.16 to 1.18 in thick",
      cuts: ["11 1/4 in", "10 in"],
    });
    expect(equalBoardsOf(form("12", "1.1", "1"), { ...plain, mill: { scaleStep: 0.0827 } })).toMatchObject({
      boards: "1 board, 1.159 in thick", // 12 - 1.19 is 10.81 in; 130 marks are 10.751, 131 would be 10.834
      cuts: ["130 marks"],
    });
  });

  it("waits for all three, and says in one sentence what cannot be used", () => {
    expect(equalBoardsOf(form("12", "", "3"), plain)).toEqual({ kind: "waiting" });
    const because = (typed: EqualBoardsForm, mill: Parameters<typeof equalBoardsOf>[1] = plain) => {
      const found = equalBoardsOf(typed, mill);
      return found.kind === "problem" ? found.because : found.kind;
    };
    expect(because(form("-3", "1", "3"))).toBe(
      "Type the blade's height at the opening cut in inches, like 12 or 12 7/16.",
    );
    expect(because(form("12", "one", "3"))).toBe("Type the thickness in inches, like 1 1/8 or 1.125.");
    expect(because(form("12", "1", "2.5"))).toBe("Type how many boards as a whole number from 1 to 100.");
    expect(because(form("12", "1", "1000"))).toBe("Type how many boards as a whole number from 1 to 100.");
    expect(because(form("12", "1", "12"))).toBe("The last cut would hit the bed.");
    expect(because(form("12", "1", "3"), { ...plain, kerf: null })).toBe("The kerf is missing on Setup.");
    expect(because(form("12", "1", "11"), { ...plain, mill: { bladeAboveBed: 1 } })).toBe(
      "Cut 11 would be 0.01 in above the bed, and your blade stops 1 in above it.",
    );
    expect(because(form("10", "2", "4"), { kerf: 0.25, mill: { bladeAboveBed: 2.5 }, unit: "cm" })).toBe(
      "Cut 4 would be 1 cm above the bed, and your blade stops 2.5 cm above it.",
    );
  });
});
