import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { boardFeet, feet, inches, percent } from "../../../src/core/basis/units";
import { cords, solidInPile } from "../../../src/core/log/cordVolume";
import { logTaper } from "../../../src/core/log/logTaper";
import { logWeight } from "../../../src/core/log/logWeight";
import { overrun } from "../../../src/core/log/overrun";
import { expectAsPrinted } from "../../support/expectAsPrinted";

describe("taper of a log", () => {
  const taper = (small: number, large: number, length: number) => logTaper(inches(small), inches(large), feet(length));

  it("is what it gains in thickness over its length", () => {
    expect(taper(12, 14, 16)).toBe(0.125); // worked by hand
    expect(taper(12, 12, 16)).toBe(0);
  });

  it("asks whether the ends are swapped", () => {
    expect(() => taper(14, 12, 16)).toThrow(
      "Large end should be at least as thick as the small end, 14 in. You have 12 in. Ends swapped?",
    );
    expect(() => taper(14, 15, 0)).toThrow(InvalidInput);
  });
});

describe("weight of a log", () => {
  const log = { smallEnd: inches(12), largeEnd: inches(14), length: feet(16) };

  it("is its Smalian volume times its density", () => {
    expectAsPrinted(logWeight(log, 63), 934.62, 0.01); // pi/576 * (144 + 196)/2 * 16 * 63, worked by hand
    expectAsPrinted(logWeight(log, 63), 935, 1);
  });

  it("refuses a density that is no number above 0", () => {
    expect(() => logWeight(log, 0)).toThrow("Green density should be above 0 lb/ft3. You have 0.");
  });
});

describe("a stacked pile", () => {
  const pile = (width: number, height: number, length: number) => ({
    width: feet(width),
    height: feet(height),
    length: feet(length),
  });

  it("of 4 x 4 x 8 ft is one cord (Fenton, NE-17)", () => {
    expect(cords(pile(4, 4, 8))).toBe(1);
    expectAsPrinted(cords(pile(16 / 12, 4, 8)), 1 / 3, 1e-9); // a face cord of 16-in sticks
  });

  it("holds 79 ft3 of wood a cord at 62 % (extension leaflet)", () => {
    expectAsPrinted(solidInPile(pile(4, 4, 8), percent(62)), 79, 1);
    expect(solidInPile(pile(4, 4, 8), percent(100))).toBe(128);
  });

  it("asks whether 0.62 is 62 %", () => {
    expect(() => solidInPile(pile(4, 4, 8), percent(0.62))).toThrow(
      "Solid share is 0.62: 0.62 %, or 62 %? Type 62 for 62 %.",
    );
    expect(() => solidInPile(pile(4, 4, 8), percent(101))).toThrow("Solid share should be between 0 and 100 %.");
    expect(() => cords(pile(4, 0, 8))).toThrow("Height should be above 0 ft. You have 0.");
  });
});

describe("overrun", () => {
  const of = (lumber: number, scale: number) => overrun(boardFeet(lumber), boardFeet(scale));

  it("is what was sawn beyond the scale: 150 percent recovery is 50 percent (Plank 1985)", () => {
    expect(of(150, 100)).toBe(50);
    expect(of(128, 100)).toBe(28);
    expect(of(90, 100)).toBe(-10);
    expect(of(0, 100)).toBe(-100);
  });

  it("needs a scale", () => {
    expect(() => of(128, 0)).toThrow(OutOfRange);
    expect(() => of(128, 0)).toThrow("Nothing to work on yet: the scale is 0 bf.");
    expect(() => of(-1, 100)).toThrow("Lumber should be 0 or more bf. You have -1.");
  });
});
