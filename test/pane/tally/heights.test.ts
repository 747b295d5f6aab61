import { describe, expect, it } from "vitest";
import { parseTallyLine } from "../../../src/pane/tally/parseTallyLine";
import { sayTree } from "../../../src/pane/tally/sayTree";
import { writeTallyLine } from "../../../src/pane/tally/writeTallyLine";

const species = [{ code: "ro", name: "red oak" }];

function read(text: string, heightIs: "logs" | "feet" = "logs") {
  const line = parseTallyLine(text, { species, heightIs });
  if (line.kind === "tree") return { logs: line.tree.logs, height: line.tree.height, count: line.tree.count };
  return line.kind === "unclear" ? line.because : line.kind;
}

describe("a height that says what it is", () => {
  it.each(["h85", "H85", "85ft", "85FT", "85 ft", "85 feet", "85'", "85’"])(
    "ro 14.3 %s is a total height, whichever Setup says is measured",
    (written) => {
      for (const heightIs of ["logs", "feet"] as const)
        expect(read(`ro 14.3 ${written}`, heightIs)).toEqual({ logs: null, height: 85, count: 1 });
    },
  );

  it.each(["2.5logs", "2.5 logs", "2.5LOGS"])("ro 14.3 %s is logs, whichever Setup says is measured", (written) => {
    for (const heightIs of ["logs", "feet"] as const)
      expect(read(`ro 14.3 ${written} x2`, heightIs)).toEqual({ logs: 2.5, height: null, count: 2 });
  });

  it("both can stand in one line, in any order", () => {
    const both = { logs: 2.5, height: 85, count: 1 };
    expect(read("ro 14.3 2.5 h85")).toEqual(both);
    expect(read("ro 14.3 h85 2.5")).toEqual(both);
    expect(read("ro 14.3 85 2.5logs", "feet")).toEqual(both);
    expect(read("ro h85 14.3 2.5")).toEqual(both);
  });
});

describe("a bare number behind the DBH", () => {
  it("is what Setup says is measured", () => {
    expect(read("ro 14.3 2.5")).toEqual({ logs: 2.5, height: null, count: 1 });
    expect(read("ro 14.3 85", "feet")).toEqual({ logs: null, height: 85, count: 1 });
  });

  it("is never taken for the other one in silence", () => {
    expect(read("ro 14.3 85")).toBe("85 is too much for 16-ft logs. For a total height of 85 ft type h85.");
    expect(read("ro 14.3 2.5", "feet")).toBe(
      "Setup says total height is measured, and 2.5 ft is too little for a tree. For logs type 2.5logs.",
    );
  });

  it.each([
    ["ro 14.3 h85 90ft", "The total height is given twice. Keep one."],
    ["ro 14.3 2 3logs", "The number of logs is given twice; 2 is left over."],
    ["ro 14.3 2logs 3logs", "The number of logs is given twice. Keep one."],
    ["ro 14.3 h", 'The total height should be a number above 0 in feet, like h85. You have "h".'],
    ["ro 14.3 h0", 'The total height should be a number above 0 in feet, like h85. You have "h0".'],
    ["ro 14.3 h8x", 'The total height should be a number above 0 in feet, like h85. You have "h8x".'],
    ["ro h85", "Type the DBH in inches after ro."],
  ])("%s: %s", (text, because) => {
    expect(read(text)).toBe(because);
  });
});

describe("the echo", () => {
  const tree = { species: "ro", dbh: 14.3, logs: 2.5, height: 85, count: 1, cull: null, note: "" };

  it("says in words which height was understood", () => {
    expect(sayTree(tree, species)).toBe("red oak, 14.3 in, 2.5 logs, total height 85 ft");
    expect(sayTree({ ...tree, logs: null }, species)).toBe("red oak, 14.3 in, total height 85 ft");
    expect(sayTree({ ...tree, height: null }, species)).toBe("red oak, 14.3 in, 2.5 logs");
    expect(sayTree({ ...tree, logs: null, height: null }, species)).toBe("red oak, 14.3 in, logs not measured");
    expect(sayTree({ ...tree, logs: null, height: null }, species, "feet")).toBe(
      "red oak, 14.3 in, total height not measured",
    );
  });

  it("is put back into the box as it can be read again", () => {
    expect(writeTallyLine(tree)).toBe("ro 14.3 2.5 h85");
    expect(writeTallyLine(tree, "feet")).toBe("ro 14.3 2.5logs h85");
  });
});
