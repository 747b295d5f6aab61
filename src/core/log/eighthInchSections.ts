import { shown } from "../basis/require";
import { sum, type Step } from "../basis/step";
import type { LogRule, ScaledLog } from "./logRule";
import { noPublishedValue } from "./noPublishedValue";
import { requireLog } from "./requireLog";

const SECTION = 4; // ft [1]
const TAPER = 0.5; // in per section [1]
const OF_SQUARE = 0.22; // [1]
const OF_TOP = 0.71; // [1]

/**
 * Board feet that a 1/8-inch saw takes from a log built of 4-ft sections, each sawn at its own top diameter:
 * the body that both International rules share.
 *
 *     V = sum over the sections of (0.22 T^2 - 0.71 T),   T = D, D + 1/2, D + 1, ...
 *
 *     V  lumber tally                                [bf]
 *     T  diameter inside bark at the section's top   [in]
 *     D  diameter inside bark at the log's small end [in]
 *
 * Sections count from the small end. A rest shorter than 4 ft gives its share of a section that stands at its own
 * top diameter: the statutes are silent on it, and this keeps to their words (a choice of ours; the other reading,
 * a broken number of sections, differs by at most 1 bf up to 40 in and 20 ft).
 *
 * For n whole sections the sums are closed forms, so that a long column needs no inner loop:
 *
 *     sum of T   = n D   + (1/2)   n (n - 1) / 2
 *     sum of T^2 = n D^2 +   D     n (n - 1) / 2 + (1/4) n (n - 1) (2 n - 1) / 6
 *
 * Valid where the topmost section does not hold less than nothing: from about 3.23 in up.
 *
 * @param rule the rule that is spoken of where there is no value
 * @throws InvalidInput when the diameter or the length is not a number above 0
 * @throws OutOfRange below 0.71 / 0.22 in
 *
 * [1] Michigan Compiled Laws 290.401; Massachusetts General Laws c. 96 s. 11A
 */
export function eighthInchSections(rule: LogRule, log: ScaledLog): number {
  const { diameter, length } = log;
  requireLog(log);
  if (section(diameter) < 0) throw noPublishedValue(rule, log);

  const n = Math.floor(length / SECTION);
  const steps = (n * (n - 1)) / 2;
  const sumOfTops = n * diameter + TAPER * steps;
  const sumOfSquares =
    n * diameter * diameter + 2 * TAPER * diameter * steps + (TAPER * TAPER * steps * (2 * n - 1)) / 3;
  const rest = length / SECTION - n;

  return OF_SQUARE * sumOfSquares - OF_TOP * sumOfTops + rest * section(diameter + n * TAPER); // [1]
}

/** One 4-ft section. [1] */
const section = (top: number) => (OF_SQUARE * top - OF_TOP) * top;

/** The same sum set down section by section, from the small end to the butt. */
export function eighthInchWorking({ diameter, length }: ScaledLog): readonly Step[] {
  const steps: Step[] = [];
  for (let k = 0; k * SECTION < length; k += 1) {
    const top = diameter + k * TAPER;
    const share = Math.min(1, length / SECTION - k);
    const whole = sum`${OF_SQUARE} * ${top} ^ 2 - ${OF_TOP} * ${top}`;
    const place = `Section ${k + 1}${share < 1 ? ", a short one" : ""}`;
    steps.push(
      { sum: sum`${diameter} + ${k} * ${TAPER}`, meaning: `${place}: its top diameter`, value: top, unit: "in" },
      {
        sum: share < 1 ? `(${whole}) * ${shown(share)}` : whole,
        meaning: `${place}: its lumber`,
        value: share * section(top),
        unit: "bf",
      },
    );
  }
  const parts = steps.filter(({ unit }) => unit === "bf").map(({ value }) => value);
  return [
    ...steps,
    {
      sum: parts.map(shown).join(" + "),
      meaning: "All sections together, with a 1/8-in kerf",
      value: parts.reduce((total, part) => total + part, 0),
      unit: "bf",
    },
  ];
}
