import type { Choice } from "../basis/choices";
import { diameterClass, ROUNDING } from "./diameterClass";

/** Where the limits of diameter classes lie, and what a class is called. */
export interface ClassRule extends Choice {
  /** The rule in words, for a class width, as the head of a table says it. */
  says(width: number, unit: string): string;
  /** Number of the class that holds a diameter; the lower limit belongs to the class. */
  numberOf(dbh: number, width: number): number;
  /** The midpoint of a class, by which it is called. */
  midpointOf(number: number, width: number): number;
}

const tidy = (value: number) => Number(value.toFixed(6));

/** Whole multiples of the width stand in the middle of the classes: the 2-inch class 12 holds 11.0 to under 13.0. */
export const classesInTheMiddle: ClassRule = {
  title: "Middle",
  aliases: ["Midpoint", "Centered"],
  says: (width, unit) => example(classesInTheMiddle, width, unit),
  numberOf: diameterClass,
  midpointOf: (number, width) => tidy(number * width),
};

/** Classes begin at whole multiples of the width: 16.0 to under 18.0 is called 17, as Marshall and Iles print it. */
export const classesFromTheEdge: ClassRule = {
  title: "Edge",
  aliases: ["Lower limit", "Lower edge"],
  says: (width, unit) => example(classesFromTheEdge, width, unit),
  numberOf: (dbh, width) => Math.floor(dbh / width + ROUNDING),
  midpointOf: (number, width) => tidy((number + 0.5) * width),
};

export const classRules: readonly ClassRule[] = [classesInTheMiddle, classesFromTheEdge];

/** "class 12 is 11 to under 13 in", for the class that holds 12 inches or so. */
function example(rule: ClassRule, width: number, unit: string): string {
  const middle = rule.midpointOf(rule.numberOf(unit === "cm" ? 30 : 12, width), width);
  return `class ${middle} is ${tidy(middle - width / 2)} to under ${tidy(middle + width / 2)} ${unit}`;
}
