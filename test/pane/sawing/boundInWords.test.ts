import { describe, expect, it } from "vitest";
import { boundInWords } from "../../../src/pane/sawing/boundInWords";

describe("how good a plan is, in words", () => {
  const bound = {
    most: 213.4,
    gives: 81.25,
    settings: "any",
    bestOf: "No other set of parallel cuts gives more value.",
  };

  it("names the goal, and that any setting was allowed", () => {
    expect(boundInWords(bound, true, "in")).toBe(
      "No other set of parallel cuts gives more value. At any setting. By area and kerf no plan of this log could give " +
        "over 213 bf; this one gives 81.3 % of the dollars that area and kerf allow.",
    );
    expect(boundInWords(bound, false, "in")).toContain("81.3 % of the board feet");
  });

  it("tells the step of the settings as the scale shows it", () => {
    const said = (settings: number, unit = "in") => boundInWords({ ...bound, settings }, true, unit);
    expect(said(1 / 32)).toContain("Settings tried: every 1/32 in.");
    expect(said(0.3, "cm")).toContain("every 0.3 cm.");
  });
});
