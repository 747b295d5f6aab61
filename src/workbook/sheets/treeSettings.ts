import { heightsMeasured } from "../../core/cruise/checkHeight";
import { standOrigins } from "../../core/tree/national/standOrigins";
import type { EntryRule } from "../plan";
import type { Settings } from "../settings";
import { named } from "../tables";
import type { Setting } from "./setting";

const oneOf = (choices: readonly { readonly title: string }[]): EntryRule => ({
  kind: "list",
  choices: choices.map(({ title }) => title),
  strict: true,
  message: `One of: ${choices.map(({ title }) => title).join(", ")}.`,
});

/** Which height of the trees was measured, and what the national equations ask about the stand. */
export const treeSettings = ({ heightMeasured, division, origin }: Settings): readonly Setting[] => [
  {
    name: named.heightMeasured,
    label: "Height measured",
    value: heightMeasured,
    unit: "",
    comment:
      "Logs of 16 ft give board feet by form class. Total height gives wood and weight by the national equations.",
    rule: oneOf(heightsMeasured),
  },
  {
    name: named.division,
    label: "Division",
    value: division,
    unit: "",
    comment: "Bailey ecodivision for the national equations, such as 220 or M210. Blank: the species at large.",
  },
  {
    name: named.origin,
    label: "Stand origin",
    value: origin,
    unit: "",
    comment: "Natural or Planted: matters to slash and loblolly pine by total height.",
    rule: oneOf(standOrigins),
  },
];
