import { figure, short } from "../figures";
import type { LocalFit, LocalUnits } from "../job/readLocalVolume";

/** The fitted equation with its figures: "V = -0.298 + 0.00212 D² H". */
export function sayEquation({ table: { form, coefficients } }: LocalFit): string {
  const { a, b, c } = coefficients;
  if (c !== undefined) return `V = ${significant(a)} × D^${significant(b)} × H^${significant(c)}`;
  return `${form.equation.split("=")[0]?.trim()} = ${significant(a)} ${b < 0 ? "-" : "+"} ${significant(Math.abs(b))} × D² × H`;
}

/** How far a tree may be off, and which trees that speaks for. */
export function sayError({ trees, error, errorPercent, rSquared, table }: LocalFit, units: LocalUnits): string {
  const { dbh, height } = table;
  return (
    `Of ${trees} felled trees, ${short(dbh.least)} to ${short(dbh.most)} ${units.diameter} thick and ${short(height.least)} to ${short(height.most)} ${units.distance} tall. ` +
    `About two of three trees like them lie within ${Number(error.toPrecision(2))} ${units.volume} of it, ${figure(errorPercent, 1)}${NO_BREAK}% of their mean. ` +
    `It accounts for ${figure(100 * rSquared, 1)}${NO_BREAK}% of the differences between their volumes.`
  );
}

/** The finding of the chart: the equation, and how far one tree may be off. */
export const fitFinding = (fit: LocalFit): string =>
  `${sayEquation(fit)}, give or take ${figure(fit.errorPercent, 1)}${NO_BREAK}% for one tree`;

const NO_BREAK = "\u00a0";

/** Three figures, as a person would write them. */
const significant = (value: number): string => String(Number(value.toPrecision(3)));
