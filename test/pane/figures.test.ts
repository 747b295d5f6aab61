import { describe, expect, it } from "vitest";
import { rangeOf } from "../../src/pane/components/estimateLine";
import { roundedTo, short, withMargin } from "../../src/pane/figures";

const estimated = (value: number, margin: number | null, percent: number | null) => ({
  what: "",
  value,
  margin,
  percent,
  low: null,
  high: null,
});

describe("a number is shown no finer than its margin deserves", () => {
  it.each([
    [8071, 1779, 22.04, "8,070 ± 1,780 (22 %)"],
    [94.29, 14.4, 15.3, "94.3 ± 14.4 (15 %)"],
    [258272, 56928, 22.04, "258,300 ± 56,900 (22 %)"],
    [14.14, 0.34, 2.4, "14.1 ± 0.3 (2 %)"],
    [8071, null, null, "8,071, margin not known yet"],
  ])("%d with a margin of %s", (value, margin, percent, text) => {
    expect(withMargin(estimated(value, margin, percent))).toBe(text);
  });

  it("also at a margin of 0", () => {
    expect(roundedTo(0)(8071.4)).toBe("8,071");
  });

  it("drops zeros that say nothing", () => {
    expect([short(45), short(24.64), short(0.1 + 0.2)]).toEqual(["45", "24.64", "0.3"]);
  });
});

describe("a range", () => {
  const range = (low: number | null, high: number | null) =>
    rangeOf({ what: "", value: 1000, margin: 1500, percent: 150, low, high });

  it("says what is lacking, or how far it goes", () => {
    expect(range(null, null)).toBe("no margin yet: it takes 2 points");
    expect(range(0, 2000)).toBe("0 to 2,000, give or take 150 %");
  });

  it("that would begin below zero says that the sample is too small", () => {
    expect(range(-500, 2500)).toBe(
      "-500 to 2,500, give or take 150 %. Less than nothing cannot stand there: the sample is too small for a range that makes sense.",
    );
  });
});
