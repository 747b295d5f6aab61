import { textOf } from "../../core/basis/choices";
import { feet, percent } from "../../core/basis/units";
import { divisionOf } from "../../core/tree/national/divisions";
import { LEAST_HEIGHT, MOST_HEIGHT, type Stand } from "../../core/tree/national/stemEquations";
import { naturalStand, standOrigins } from "../../core/tree/national/standOrigins";
import { boundsIn, chosenOr, measuredIn } from "./measuredIn";
import { oneText, optionalNumber } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** Total height of trees, in the unit that the user writes. */
export const totalHeight = (given: unknown, { distance }: UnitSystem) =>
  measuredIn(given, "Height", distance, feet, LEAST_HEIGHT, MOST_HEIGHT);

/** Where the trees grow, as far as the national equations ask. */
export const standOf = (division: unknown, origin: unknown): Stand => ({
  division: divisionOf(textOf(oneText(division, "Division"))),
  origin: chosenOr("Origin", origin, standOrigins, naturalStand),
});

/** What is wrong with trees: rot in percent, and where the top is broken off, 0 where it is not. */
export const conditionOf = (cull: unknown, brokenAt: unknown, { distance }: UnitSystem) => ({
  cull: optionalNumber(cull, "Cull", percent, { unit: "%", low: 0, high: 100 }),
  brokenAt: optionalNumber(
    brokenAt,
    "Broken at",
    (height) => feet(height / distance.perOurs),
    boundsIn(distance, 0, MOST_HEIGHT),
  ),
});
