import { expect, it } from "vitest";
import { squareFeetPerAcre } from "../../../src/core/basis/units";
import { bafOptions, IMPERIAL_GAUGES } from "../../../src/core/cruise/bafOptions";

it("a gauge picks the basal area over its factor: 95 ft2/ac", () => {
  const options = bafOptions(squareFeetPerAcre(95), IMPERIAL_GAUGES);
  expect(options.slice(0, 4)).toEqual([
    { baf: 5, trees: 19, band: "more" },
    { baf: 10, trees: 9.5, band: "more" },
    { baf: 15, trees: 95 / 15, band: "fits" },
    { baf: 20, trees: 4.75, band: "fits" },
  ]);
  expect(options.at(-1)).toEqual({ baf: 40, trees: 2.375, band: "fewer" });
});

it("the band of 4 to 8 trees holds both its ends", () => {
  expect(bafOptions(40, [5, 10]).map(({ band }) => band)).toEqual(["fits", "fits"]);
});

it("a stand has some basal area", () => {
  expect(() => bafOptions(0, [10])).toThrow("Basal area should be above 0. You have 0.");
});
