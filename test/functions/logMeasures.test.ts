import { describe, expect, it } from "vitest";
import { cordVolume, LogMeasureUnits, logTaper, logWeight, overrun } from "../../src/functions/logMeasures";
import { expectAsPrinted } from "../support/expectAsPrinted";

const problem = (code: string, message: string) => expect.objectContaining({ code, message }) as unknown;
const one = (cells: unknown[][]) => cells[0]?.[0] as number;
const { metric } = LogMeasureUnits;

describe("LOGTAPER", () => {
  it("is inches a foot, or centimetres a metre", () => {
    expect(logTaper([[12], [""]], [[14], [14]], [[16]])).toEqual([[0.125], [""]]);
    expectAsPrinted(one(logTaper([[30]], [[36]], [[5]], metric)), 1.2, 1e-9); // worked by hand
  });

  it("asks whether the ends are swapped, in the user's unit", () => {
    expect(logTaper([[14]], [[12]], [[16]])).toEqual([
      [
        problem(
          "#VALUE!",
          "Large end should be at least as thick as the small end, 14 in. You have 12 in. Ends swapped?",
        ),
      ],
    ]);
    expect(logTaper([[36]], [[30]], [[5]], metric)).toEqual([
      [
        problem(
          "#VALUE!",
          "Large end should be at least as thick as the small end, 36 cm. You have 30 cm. Ends swapped?",
        ),
      ],
    ]);
  });
});

describe("LOGWEIGHT", () => {
  it("is the Smalian volume times the density, in pounds or kilograms", () => {
    expectAsPrinted(one(logWeight([[12]], [[14]], [[16]], [[63]])), 934.62, 0.01); // worked by hand
    const kilograms = one(logWeight([[25]], [[29]], [[5]], [[1000]], metric));
    expectAsPrinted(kilograms, 287.848, 0.001); // 0.287848 m3, worked by hand
  });

  it("refuses a density that no wood has, as when metric and imperial are mixed", () => {
    expect(logWeight([[12]], [[14]], [[16]], [[1000]])).toEqual([
      [
        problem(
          "#VALUE!",
          "Green density should be between 10 and 100 lb/ft3. You have 1000. Missing a decimal point?",
        ),
      ],
    ]);
  });
});

describe("CORDVOLUME", () => {
  it("is cords, or solid cubic feet where the share is given", () => {
    expect(cordVolume([[4], [4], [""]], [[4], [4], [4]], [[8]], [[""], [62], [62]])).toEqual([[1], [79.36], [""]]);
    expect(cordVolume([[4]], [[4]], [[8]], [[0.62]])).toEqual([
      [problem("#VALUE!", "Solid share is 0.62: 0.62 %, or 62 %? Type 62 for 62 %.")],
    ]);
  });
});

describe("OVERRUN", () => {
  it("is percent over the scale, blank where nothing was sawn yet", () => {
    expect(overrun([[128], [150], [""], [90]], [[100]])).toEqual([[28], [50], [""], [-10]]);
  });

  it("has nothing to work on without a scale", () => {
    expect(overrun([[128]], [[0]])).toEqual([[problem("#N/A", "Nothing to work on yet: the scale is 0 bf.")]]);
    expect(overrun([["12 bf"]], [[100]])).toEqual([
      [problem("#VALUE!", 'Lumber needs a number, but the cell has "12 bf". Type just the number.')],
    ]);
  });
});
