import { describe, expect, it } from "vitest";
import { parseFlaws, sayFlaws, writeFlaws } from "../../../src/pane/bucking/flawLine";

const flaws = (line: string) => {
  const read = parseFlaws(line);
  if ("problem" in read) throw new Error(read.problem);
  return read.flaws;
};

describe("the line of a stem's flaws", () => {
  it("reads rot with both heights, crooks with one, and breaks up to the tip", () => {
    expect(flaws("rot 26-29, crook 47, broken 62")).toEqual([
      { what: "rot", from: 26, to: 29 },
      { what: "crook", from: 47, to: 47 },
      { what: "broken", from: 62, to: null },
    ]);
    expect(flaws("Rot 0 to 6.5; fork 33.5")).toEqual([
      { what: "rot", from: 0, to: 6.5 },
      { what: "fork", from: 33.5, to: 33.5 },
    ]);
    expect(flaws("26-29")).toEqual([{ what: "rot", from: 26, to: 29 }]);
    expect(flaws("crook 40-43")).toEqual([{ what: "crook", from: 40, to: 43 }]);
    expect(flaws("  ")).toEqual([]);
  });

  it.each([
    ["rot", '"rot" should be a word and a height, such as rot 26-29, crook 47 or broken 62.'],
    ["rot 26", '"rot 26" needs where it begins and where it ends, such as rot 26-29.'],
    ["rot 29-26", '"rot 29-26" ends below where it begins.'],
    ["rot 26-29, metal", '"metal" should be a word and a height, such as rot 26-29, crook 47 or broken 62.'],
    ["crook 0", '"crook 0" needs a height above 0.'],
    ["broken 620", 'Heights go up to 400 ft. You have "broken 620".'],
  ])("%s: %s", (line, problem) => expect(parseFlaws(line)).toEqual({ problem }));

  it.each(["rot 26-29, crook 47, broken 62", "rot 0-6", "fork 33.5", "crook 40-43", "metal 5-6", ""])(
    "writes %s as it was typed",
    (line) => expect(writeFlaws(flaws(line))).toBe(line),
  );

  it("says what is done about them", () => {
    expect(sayFlaws([])).toBe("A sound stem.");
    expect(sayFlaws(flaws("rot 26-29, crook 47, broken 62"))).toBe(
      "Logs keep clear of the rot from 26 to 29 ft, the crook at 47 ft, all above 62 ft.",
    );
  });

  it("gives a row of the sheet without a word one that fits", () => {
    expect(writeFlaws([{ what: "", from: 10, to: 12 }])).toBe("rot 10-12");
    expect(writeFlaws([{ what: "", from: 10, to: 10 }])).toBe("crook 10");
    expect(writeFlaws([{ what: "rot", from: 40, to: null }])).toBe("broken 40");
    expect(writeFlaws([{ what: "rot", from: 40, to: 40 }])).toBe("rot 40-40");
  });
});
