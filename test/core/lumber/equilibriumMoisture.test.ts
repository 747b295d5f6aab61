import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { fahrenheit, percent } from "../../../src/core/basis/units";
import { equilibriumMoisture } from "../../../src/core/lumber/equilibriumMoisture";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const settled = (temperature: number, humidity: number) =>
  equilibriumMoisture(fahrenheit(temperature), percent(humidity));

describe.each(["lumber/equilibriumMoisture.csv", "lumber/equilibriumMoisture.recalled.csv"])("%s", (file) => {
  const { rows, printedTo, standing, source } = published(file);

  it.each(rows)(`$temperature F and $humidity %: $moisture %, ${standing} in ${source}`, (row) => {
    const step = row.reason ? 2 * numberIn(row, "tolerance") : printedTo;
    expectAsPrinted(settled(numberIn(row, "temperature"), numberIn(row, "humidity")), numberIn(row, "moisture"), step);
  });
});

it("was held against 192 cells read, five of them on a half, and 10 recalled, one of them so", () => {
  const read = published("lumber/equilibriumMoisture.csv").rows;
  const recalled = published("lumber/equilibriumMoisture.recalled.csv").rows;
  const loose = (rows: typeof read) => rows.filter(({ reason }) => reason).length;
  expect([read.length, loose(read)]).toEqual([192, 5]);
  expect([recalled.length, loose(recalled)]).toEqual([10, 1]);
});

/** The same equation with its Fahrenheit constants, recalled from the Wood Handbook and seen in a forum's copy of it. */
function inFahrenheit(t: number, humidity: number): number {
  const w = 330 + 0.452 * t + 0.00415 * t ** 2;
  const k = 0.791 + 0.000463 * t - 0.000000844 * t ** 2;
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t ** 2;
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t ** 2;
  const kh = (k * humidity) / 100;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2));
}

it("agrees with the equation in Fahrenheit to 0.02 everywhere below 95 %, and rises with humidity", () => {
  const temperature = fc.double({ min: 30, max: 130, noNaN: true });
  const humidity = fc.double({ min: 5, max: 95, noNaN: true });
  fc.assert(
    fc.property(temperature, humidity, (t, h) => {
      expect(Math.abs(settled(t, h) - inFahrenheit(t, h))).toBeLessThan(0.02);
      expect(settled(t, Math.min(95, h + 1))).toBeGreaterThanOrEqual(settled(t, h));
    }),
  );
});

it.each([
  [68, 50, 9.2711],
  [122, 80, 14.2831],
  [32, 20, 4.6142],
])("is worked out the same at %f F and %f % by another programme: %f %", (temperature, humidity, moisture) => {
  expectAsPrinted(settled(temperature, humidity), moisture, 0.0001);
});

it.each([
  [29.9, 50],
  [140, 55],
  [70, 4],
  [70, 96],
])("has no value at %f F and %f %", (temperature, humidity) => {
  expect(() => settled(temperature, humidity)).toThrow(OutOfRange);
});

it.each([
  [NaN, 50],
  [70, NaN],
  [70, 101],
  [1000, 50],
])("refuses %f F and %f %", (temperature, humidity) => {
  expect(() => settled(temperature, humidity)).toThrow(InvalidInput);
});
