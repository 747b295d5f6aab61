import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { flaw } from "../tables";
import { asked } from "./sheetParts";

/** What keeps logs out of a part of the stem: a line for each. */
export const flawColumns: readonly ColumnPlan[] = [
  {
    heading: flaw.from,
    width: 10,
    format: formats.tenth,
    rule: asked(0, 400, "Feet above the ground; blank: the ground."),
  },
  {
    heading: flaw.to,
    width: 10,
    format: formats.tenth,
    rule: asked(0, 400, "Feet; as From for a crook; blank: the tip."),
  },
  {
    heading: flaw.what,
    width: 16,
    rule: {
      kind: "list",
      choices: ["Rot", "Crook", "Fork", "Broken", "Metal"],
      strict: false,
      message: "What it is; for you to read.",
    },
  },
];
