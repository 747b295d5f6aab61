import { describe, expect, it } from "vitest";
import { acres } from "../../../src/core/basis/units";
import { plotGuides, plotsByAcres } from "../../../src/core/cruise/plotsByAcres";

const [nrcs, teaching] = plotGuides as [(typeof plotGuides)[number], (typeof plotGuides)[number]];

describe("printed guides", () => {
  it.each([
    // Forestry Technical Note 190-FOR-01, 2018, table 1
    [nrcs, 5, 3],
    [nrcs, 10, 3],
    [nrcs, 11, 6],
    [nrcs, 20, 6],
    [nrcs, 21, 10],
    [nrcs, 40, 10],
    [nrcs, 41, 15],
    [nrcs, 150, 15],
    [nrcs, 151, 16],
    [nrcs, 400, 40],
    // Kentucky forestry teaching slides, continuous at 40 and at 80 ac
    [teaching, 5, 10],
    [teaching, 10, 10],
    [teaching, 11, 11],
    [teaching, 32, 32],
    [teaching, 40, 40],
    [teaching, 41, 41],
    [teaching, 80, 60],
    [teaching, 81, 61],
    [teaching, 200, 90],
  ] as const)("$title", (guide, tract, plots) => expect(plotsByAcres(acres(tract), guide)).toBe(plots));

  it("the teaching rule stops at 200 acres", () => {
    expect(() => plotsByAcres(acres(201), teaching)).toThrow("This rule stops at 200 acres.");
  });

  it("never ask for fewer plots on more acres", () => {
    for (const guide of plotGuides)
      for (let tract = 0.5; tract < 200; tract += 0.5)
        expect(plotsByAcres(acres(tract + 0.5), guide)).toBeGreaterThanOrEqual(plotsByAcres(acres(tract), guide));
  });

  it("need acres", () => expect(() => plotsByAcres(acres(0), nrcs)).toThrow("Acres should be above 0 ac. You have 0."));
});
