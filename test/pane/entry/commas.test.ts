import { describe, expect, it } from "vitest";
import { parseBoardLine } from "../../../src/pane/boards/parseBoardLine";
import { askOfComma } from "../../../src/pane/entry/lineWords";
import { parseLogLine } from "../../../src/pane/logs/parseLogLine";
import { parseTallyLine } from "../../../src/pane/tally/parseTallyLine";

const known = { species: [{ code: "ro", name: "red oak" }], lastSpecies: "ro" };

describe("a comma between two bare numbers", () => {
  it.each(["12,5", "ro 12,5", "ro 12,5 2", "ro 12.5 2,5", "ro, 14,3", "14,3, 2", "16,2 /leans"])(
    "is asked about in %j rather than read as two numbers",
    (text) => {
      const read = parseTallyLine(text, known);
      expect(read).toMatchObject({
        kind: "unclear",
        because: expect.stringMatching(/^Is \d+,\d one number\?/) as string,
      });
    },
  );

  it("says both ways to write it", () => {
    expect(askOfComma("ro 12,5")).toBe("Is 12,5 one number? Then type 12.5. Two numbers need a space: 12 5.");
  });

  it.each([
    ["ro,14.3,2.5", 14.3, 2.5],
    ["ro,14,2", 14, 2],
    ["14.3,2", 14.3, 2],
    ["14,2.5", 14, 2.5],
    ["ro 14.3, 2", 14.3, 2],
    ["ro 14, 2", 14, 2],
    ["ro 14 2 /12,5 ft from the road", 14, 2],
  ])("parts words in %j", (text, dbh, logs) => {
    expect(parseTallyLine(text, known)).toMatchObject({ kind: "tree", tree: { dbh, logs } });
  });

  it("is never read as another tree: four numbers are left over", () => {
    expect(parseTallyLine("ro,14,3,2,5", known).kind).toBe("unclear");
  });

  it("is asked about in lines of logs and boards, too", () => {
    expect(parseLogLine("ro 14,5 16", known).kind).toBe("unclear");
    expect(parseLogLine("ro,14,16", known).kind).toBe("entry");
    expect(parseBoardLine("1,25 6 12").kind).toBe("unclear");
    expect(parseBoardLine("1,6,12").kind).toBe("entry");
  });
});
