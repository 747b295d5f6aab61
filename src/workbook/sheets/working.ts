import { beside, fixed } from "../address";
import { formats } from "../formats";
import type { BlockPlan, SheetPlan } from "../plan";
import { named, out } from "../tables";
import { across, cautionLine, down, heading, quoted, sheetPlan, title } from "./sheetParts";
import { workedFunctions } from "./workingInputs";

export const WORKING_SHEET = "Working";
/** Steps of the longest way: each log of a tall stem has up to twenty. */
const ROOM = 600;
/** Beside the steps, so that they can grow. */
const INGREDIENTS_AT = "F4";

/** Each function with the place of its heading; what goes into it stands below. */
const placed = (() => {
  let row = 0;
  return workedFunctions.map((one) => {
    const top = beside(INGREDIENTS_AT, row, 0);
    row += one.ingredients.length + 2;
    return { ...one, top, at: one.ingredients.map((_, i) => beside(top, 1 + i, 1)) };
  });
})();

const FIRST = workedFunctions[0]?.name ?? "";

/** How the answer of a function came about, step by step, so that it can be done again by hand. */
export function workingSheet(): SheetPlan {
  return sheetPlan({
    name: WORKING_SHEET,
    sheetClass: "presentation",
    landscape: true,
    widths: [44, 74, 18, 10, 3, 34, 20, 10],
    frozenRows: 3,
    blocks: [
      title(WORKING_SHEET),
      down("A2", "Note", [cautionLine("Estimate")]),
      down("A4", "Computed", ["Show the working of"]),
      down("B4", "Input", [FIRST]),
      heading("A6", { formula: `=${chosenOf(({ what }) => quoted(what))}` }, 4),
      ...placed.flatMap(ingredientBlocks),
    ],
    names: [{ name: named.workedFunction, at: "B4" }],
    entryRules: [
      {
        at: "B4",
        rule: {
          kind: "list",
          choices: workedFunctions.map(({ name }) => name),
          strict: true,
          message: "The function to set down step by step.",
        },
      },
      ...placed.flatMap(({ ingredients, at }) =>
        ingredients.flatMap(({ rule }, i) => (rule ? [{ at: at[i] ?? "", rule }] : [])),
      ),
    ],
    spills: [
      {
        name: out.working,
        at: "A7",
        formula: `=${chosenOf((one) => one.working(one.at.map(fixed)))}`,
        rows: ROOM,
        columns: 4,
        formats: [formats.text, formats.general, formats.general, formats.general],
      },
    ],
  });
}

/** A formula for each function; of them the one that is chosen in the menu. */
const chosenOf = (of: (one: (typeof placed)[number]) => string): string =>
  placed.reduceRight(
    (otherwise, one) => `IF(${named.workedFunction}=${quoted(one.name)},${of(one)},${otherwise})`,
    '""',
  );

function ingredientBlocks({ name, ingredients, top }: (typeof placed)[number]): readonly BlockPlan[] {
  return [
    across(top, "Heading", [`What goes into ${name}`, null, null]),
    down(
      beside(top, 1, 0),
      "Computed",
      ingredients.map(({ label }) => label),
    ),
    ...ingredients.map(({ value }, i) =>
      down(
        beside(top, 1 + i, 1),
        value !== null && typeof value === "object" ? "Linked" : "Input",
        [value],
        formats.general,
      ),
    ),
    down(
      beside(top, 1, 2),
      "Unit",
      ingredients.map(({ unit }) => unit),
    ),
  ];
}
