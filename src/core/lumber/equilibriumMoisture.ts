import { OutOfRange } from "../basis/problem";
import { requireBetween } from "../basis/require";
import type { Source } from "../basis/source";
import { percent, type Fahrenheit, type Percent } from "../basis/units";

export const equilibriumMoistureSources: readonly Source[] = [
  {
    author: "W. T. Simpson",
    year: "1998",
    title: "Equilibrium moisture content of wood in outdoor locations, FPL-RN-0268",
    where: "[1] the sorption equation with its Fahrenheit constants, as the Wood Handbook has it",
    standing: "from memory",
  },
  {
    author: "B. Shah, package ConSciR",
    year: "n.d.",
    title: "R/calcEMC_wood.R, after Simpson 1998",
    where: "[2] the same equation with Celsius constants, which stays within 0.013 % of [1] from 30 to 90 F",
    url: "https://github.com/BhavShah01/ConSciR",
    standing: "read",
  },
  {
    author: "Forest Products Laboratory",
    year: "n.d.",
    title: "Equilibrium moisture content of wood, as reprinted by a dealer",
    where: "[3] 192 cells, 30 to 130 F by 5 to 90 %: what the equation is held against",
    url: "https://woodworkerssource.com/wood-moisture-content.html",
    standing: "read",
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
 *     T          temperature                           [F]
 *     W          330 + 0.452 T + 0.00415 T^2
 *     K          0.791 + 0.000463 T - 0.000000844 T^2
 *     K1         6.34 + 0.000775 T - 0.0000935 T^2
 *     K2         1.09 + 0.0284 T - 0.0000904 T^2
 *
 * Valid from 30 to 130 F and from 5 to 95 % humidity, where it stays within 0.1 of every printed cell but one, a slip.
 * One curve for all species: good enough for drying practice.
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
  const t = temperature;
  const w = 330 + 0.452 * t + 0.00415 * t * t; // [1]
  const k = 0.791 + 0.000463 * t - 0.000000844 * t * t; // [1]
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t; // [1]
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t; // [1]
  const kh = (k * humidity) / 100;
  const hydrates = k1 * kh + 2 * k1 * k2 * kh * kh;
  return percent((1800 / w) * (kh / (1 - kh) + hydrates / (1 + k1 * kh + k1 * k2 * kh * kh)));
}

const A_HAIR = 1e-9; // so that a limit given in Celsius is still inside

const outside = (value: number, [low, high]: readonly [number, number]) =>
  value < low - A_HAIR || value > high + A_HAIR;
