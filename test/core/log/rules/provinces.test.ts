import { describe, expect, it } from "vitest";
import { OutOfRange } from "../../../../src/core/basis/problem";
import { measuredAtSmallEnd } from "../../../../src/core/log/measuredAtSmallEnd";
import { britishColumbia } from "../../../../src/core/log/rules/britishColumbia";
import { inscribedSquare } from "../../../../src/core/log/rules/inscribedSquare";
import { internationalQuarter } from "../../../../src/core/log/rules/internationalQuarter";
import { ontario } from "../../../../src/core/log/rules/ontario";
import { roy } from "../../../../src/core/log/rules/roy";
import { twoThirds } from "../../../../src/core/log/rules/twoThirds";
import { vermont } from "../../../../src/core/log/rules/vermont";
import { log } from "../printedLog";

describe("where a formula would go below nothing there is no value", () => {
  it.each([
    [ontario, 2.4, 16],
    [ontario, 12, 0.9],
    [roy, 0.9, 16],
    [britishColumbia, 1.4, 16],
  ])("$title: %s, %f in x %f ft", (rule, diameter, length) => {
    expect(() => rule.scale(log(diameter, length))).toThrow(OutOfRange);
    expect(() => rule.scale(log(diameter, length))).toThrow(
      `${rule.title} as published has no value for ${diameter} in x ${length} ft.`,
    );
  });

  it("and none is missing where it gives just nothing", () => {
    expect(roy.scale(log(1, 16))).toBe(0);
    expect(britishColumbia.scale(log(1.5, 16))).toBe(0);
  });
});

describe("Vermont", () => {
  it("drops a fraction below a half, counts one above it, and drops the half itself", () => {
    expect([12.49, 12.5, 12.51].map((diameter) => vermont.scale(log(diameter, 12)))).toEqual([72, 72, 84.5]);
  });

  it("at a whole inch is the inscribed square", () => {
    for (let diameter = 1; diameter <= 40; diameter += 1)
      expect(inscribedSquare.scale(log(diameter, 14))).toBeCloseTo(vermont.scale(log(diameter, 14)), 9);
  });
});

it("Roy divides by 20, which keeps a 12-in, 16-ft log beside International 1/4", () => {
  expect(roy.scale(log(12, 16))).toBeCloseTo(96.8, 9);
  expect(internationalQuarter.scale(log(12, 16))).toBeCloseTo(96.92, 2); // Michigan 290.401, worked by hand
});

it("two-thirds is refused where only the small end is known", () => {
  expect(() => measuredAtSmallEnd(twoThirds)).toThrow(
    "Two-thirds of middle diameter needs the middle diameter, but here the small end is given.",
  );
  expect(measuredAtSmallEnd(roy)).toBe(roy);
});
