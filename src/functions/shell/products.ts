import { chosen, textOf, type Choice } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { feet, inches } from "../../core/basis/units";
import { cubicFormulas } from "../../core/log/cubic";
import { smallEndRules } from "../../core/log/findLogRule";
import { SHORTEST_STEP, type Product } from "../../core/value/buckOrder";
import { byCord, byFormula, byRule, byWood, type ProductMeasure } from "../../core/value/productMeasures";
import { BadRows } from "./badRows";
import { boundsIn } from "./measuredIn";
import { asCells, blank, boundedNumber, type Cells } from "./readings";
import type { Unit, UnitSystem } from "./unitSystem";

const COLUMNS = 7;

/** What may stand under "rule": a log rule, a cubic formula, or the volume of the wood itself. */
interface SoldBy extends Choice {
  readonly measure: () => ProductMeasure;
  readonly cubic: boolean;
}

const waysOfSelling: readonly SoldBy[] = [
  ...smallEndRules.map((rule) => ({
    title: rule.title,
    ...(rule.aliases && { aliases: rule.aliases }),
    measure: () => byRule(rule),
    cubic: false,
  })),
  ...cubicFormulas.map((formula) => ({
    title: formula.title,
    ...(formula.aliases && { aliases: formula.aliases }),
    measure: () => byFormula(formula),
    cubic: true,
  })),
  { title: "Cords", aliases: ["Cord"], measure: () => byCord, cubic: false },
  { title: "Cubic", aliases: ["Cubic feet", "ft3", "Cubic meters", "m3"], measure: () => byWood, cubic: true },
];

/**
 * The products of a table: name, smallest small end, shortest, longest, step, rule, price. A row without a name is
 * passed over.
 *
 * @throws InvalidInput naming the first bad row and how many more there are
 */
export function productsIn(given: unknown, units: UnitSystem): readonly Product[] {
  const rows: Cells = asCells(given);
  const bad = new BadRows();
  const products: Product[] = [];
  rows.forEach((row, place) => {
    const name = textOf(row[0]).slice(0, 60);
    if (name === "" || name === "0") return;
    bad.guard(place, () => {
      if (row.length < COLUMNS) {
        throw new InvalidInput(
          `A product needs ${COLUMNS} columns: name, smallest small end, shortest, longest, step, rule, price. You have ${row.length}.`,
        );
      }
      products.push(productOf(row, name, units));
    });
  });
  bad.settle();
  return products;
}

function productOf(row: readonly unknown[], name: string, units: UnitSystem): Product {
  const { diameter, distance, cubic } = units;
  const measure = (place: number, what: string, unit: Unit, low: number, high: number) => {
    const cell = row[place];
    if (blank(cell)) throw new InvalidInput(`${what} needs a number, but the cell is blank.`);
    return boundedNumber(cell, what, boundsIn(unit, low, high)) / unit.perOurs;
  };
  const smallestEnd = inches(measure(1, "Smallest small end", diameter, 1, 80));
  const shortest = feet(measure(2, "Shortest length", distance, 1, 100));
  const longest = feet(measure(3, "Longest length", distance, 1, 100));
  const step = feet(measure(4, "Length step", distance, SHORTEST_STEP, 100));
  const soldBy = chosen("Rule", row[5], waysOfSelling);
  const price = blank(row[6]) ? 0 : boundedNumber(row[6], "Price", { unit: "$", low: 0, high: 1e6 });
  return {
    name,
    smallestEnd,
    shortest,
    longest,
    step,
    measure: soldBy.measure(),
    price: soldBy.cubic ? price * cubic.perOurs : price,
  };
}
