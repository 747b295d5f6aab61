import { textOf } from "../../core/basis/choices";
import { feet } from "../../core/basis/units";
import { divisionOf } from "../../core/tree/national/divisions";
import { LEAST_HEIGHT, MOST_HEIGHT, type Stand } from "../../core/tree/national/stemEquations";
import { naturalStand, standOrigins } from "../../core/tree/national/standOrigins";
import { chosenOr, measuredIn } from "./measuredIn";
import { oneText } from "./readings";
import type { UnitSystem } from "./unitSystem";

/** Total height of trees, in the unit that the user writes. */
export const totalHeight = (given: unknown, { distance }: UnitSystem) =>
  measuredIn(given, "Height", distance, feet, LEAST_HEIGHT, MOST_HEIGHT);

/** Where the trees grow, as far as the national equations ask. */
export const standOf = (division: unknown, origin: unknown): Stand => ({
  division: divisionOf(textOf(oneText(division, "Division"))),
  origin: chosenOr("Origin", origin, standOrigins, naturalStand),
});
