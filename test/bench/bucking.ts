import { buckHabits, buckPlan } from "../../src/functions/bucking";
import { feet, inches } from "../../src/core/basis/units";
import { doyle } from "../../src/core/log/rules/doyle";
import { buckPlan as planOf } from "../../src/core/value/buckPlan";
import { byRule } from "../../src/core/value/productMeasures";
import { bestOfAll, stemOf } from "../support/bucking";
import { ratio, type Ratio } from "./ratio";

/** Eight products at invented prices: name, smallest end, shortest, longest, step, rule, price. */
const PRODUCTS = [
  ["Veneer", 16, 8, 12, 1, "Doyle", 1400],
  ["Prime sawlog", 14, 8, 16, 1, "Doyle", 700],
  ["Sawlog", 12, 8, 16, 2, "Doyle", 450],
  ["Second sawlog", 10, 8, 16, 2, "International 1/4", 320],
  ["Tie log", 9, 8.5, 17, 8.5, "Doyle", 300],
  ["Pallet log", 7, 6, 12, 1, "Scribner", 180],
  ["Pulpwood", 4, 8, 20, 2, "Cubic", 0.25],
  ["Firewood", 3, 4, 8, 1.33, "Cubic", 0.3],
];

const ask = (call: typeof buckPlan, height: number) => () =>
  call("white oak", 24, height, PRODUCTS, null, null, [[31], [62]], [[33], [62]]);

/** The plan of one tall stem; and on a short one, against trying every way of cutting it. */
export async function buckingRatios(): Promise<readonly Ratio[]> {
  const short = {
    stem: stemOf(16, 30, 0.8),
    stump: feet(1),
    trim: feet(0),
    products: [4, 5, 6].map((length) => ({
      name: `${length} ft`,
      smallestEnd: inches(6),
      shortest: feet(length),
      longest: feet(length + 2),
      step: feet(1),
      measure: byRule(doyle),
      price: 100 * length,
    })),
  };
  return [
    await ratio(
      "BUCKPLAN, a 100-ft stem with rot and a crook, 8 products, beside BUCKHABITS on it",
      "50 ms class",
      ask(buckPlan, 100),
      ask(buckHabits as typeof buckPlan, 100),
    ),
    await ratio(
      "Best plan of a 30-ft stem, 3 products, against trying every way at every foot",
      "0.1",
      () => planOf(short),
      () => bestOfAll(short),
    ),
  ];
}
