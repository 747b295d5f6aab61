import { describe, expect, it } from "vitest";
import { readStrata, sharedOut, strataRows } from "../../../src/pane/plan/planStrata";

describe("strata of a plan", () => {
  // Shares by acres x guess x CV of the published allocation by shares of volume: 115 plots as 29, 20, 56 and 10
  const text = "Oak ridge 30 3500 40\nB, 10, 4500, 65\n\nC 20 5000 80\nD 40 1000 35 %";

  it("share out the points as the published allocation does", () => {
    const read = readStrata(text);
    expect(read.problem).toBe("");
    expect(read.strata.map(({ name }) => name)).toEqual(["Oak ridge", "B", "C", "D"]);
    expect(sharedOut(read, 115)).toEqual([29, 20, 56, 10]);
    expect(strataRows(read)[0]).toEqual({ Stratum: "Oak ridge", Acres: 30, "Guess per ac": 3500, "CV pct": 40 });
  });

  it("say what is wrong with a line, or that points are too few", () => {
    expect(readStrata("Oak twenty 9000 40").problem).toContain("needs a name, then acres");
    expect(sharedOut(readStrata(text), 3)).toContain("2");
    expect(sharedOut(readStrata(""), 20)).toEqual([]);
  });
});
