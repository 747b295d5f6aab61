import { diameterRoundings } from "../../core/log/diameterRounding";
import { menuRules } from "../../core/log/rules";
import { BUYERS_CARD } from "../../core/log/scaleCard";
import { scaleRoundings } from "../../core/log/scaleRounding";
import { formats } from "../formats";
import type { CellValue, EntryRule } from "../plan";
import type { ScaleConventions } from "../settings";
import { named } from "../tables";
import { asked } from "./sheetParts";

/** One convention of the buyer: a named cell under its label. */
interface Convention {
  readonly name: string;
  /** With its unit. */
  readonly label: string;
  readonly value: CellValue;
  readonly rule: EntryRule;
  readonly format?: string;
}

/** A table computes row by row, so a rounding that goes by the whole list cannot be one of its conventions. */
export const tableRoundings = diameterRoundings.filter(({ needsWholeList = false }) => !needsWholeList);

const oneOf = (choices: readonly string[], strict: boolean): EntryRule => ({
  kind: "list",
  choices,
  strict,
  message: `${strict ? "One of" : "Usually one of"}: ${choices.join(", ")}.`,
});
const titles = (choices: readonly { readonly title: string }[]) => choices.map(({ title }) => title);

/** How the buyer scales, in the order in which the cells stand side by side on the sheet Logs. */
export const conventionsOf = (scale: ScaleConventions): readonly Convention[] => [
  {
    name: named.scaleRule,
    label: "Log rule of the buyer",
    value: scale.rule,
    rule: oneOf([...titles(menuRules), BUYERS_CARD], false),
  },
  {
    name: named.diameterRounding,
    label: "Diameter to whole inches",
    value: scale.diameterRounding,
    rule: oneOf(titles(tableRoundings), true),
  },
  {
    name: named.scaleRounding,
    label: "Board feet rounded",
    value: scale.rounding,
    rule: oneOf(titles(scaleRoundings), true),
  },
  {
    name: named.longestLength,
    label: "Longest scaling length ft",
    value: scale.longest,
    rule: asked(4, 60, "Feet, from 4 to 60; blank for no limit."),
    format: formats.tenth,
  },
  {
    name: named.trim,
    label: "Trim ft",
    value: scale.trim,
    rule: asked(0, 2, "Feet, from 0 to 2: 0.33 for 4 inches."),
    format: formats.hundredth,
  },
  {
    name: named.lengthStep,
    label: "Length in steps of ft",
    value: scale.lengthStep,
    rule: asked(0.1, 4, "Feet: 1 for whole feet, 2 for even feet."),
    format: formats.tenth,
  },
];
