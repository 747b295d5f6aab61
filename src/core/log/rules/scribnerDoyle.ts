import { shown } from "../../basis/require";
import type { Step } from "../../basis/step";
import { boardFeet } from "../../basis/units";
import type { LogRule } from "../logRule";
import { scaledAs } from "../scaledAs";
import { toNearest } from "../toNearest";
import { doyle } from "./doyle";
import { scribner } from "./scribner";

const SMALLEST_OF_DOYLE = 4; // in

/**
 * Scribner-Doyle log rule: Scribner for small logs and Doyle for large ones, whichever gives more.
 *
 *     V = max(Scribner, Doyle)
 *
 * By the Scribner formula the two cross at 24.7 in. In old statutes the name is also used loosely for plain Doyle.
 * Rounded to the nearest whole board foot, half up, as Doyle tables are.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange where the Scribner formula has no value, below about 3.85 in
 */
export const scribnerDoyle: LogRule = {
  id: "scribnerDoyle",
  title: "Scribner-Doyle (from memory)",
  aliases: ["Scribner-Doyle"],
  fromMemory: true,
  inMenus: false,
  sources: [
    {
      author: "The trade",
      year: "",
      title: "Scribner-Doyle log rule",
      where: "the larger figure of the two rules; definition from memory",
      standing: "from memory",
    },
    ...scribner.sources,
    ...doyle.sources,
  ],

  scale(log) {
    const byScribner = scaledAs(scribnerDoyle, scribner, log);
    if (log.diameter < SMALLEST_OF_DOYLE) return byScribner;
    return boardFeet(Math.max(byScribner, doyle.scale(log)));
  },

  working(log) {
    const larger = scribnerDoyle.scale(log);
    const rules = log.diameter < SMALLEST_OF_DOYLE ? [scribner] : [scribner, doyle];
    const steps = rules.flatMap((rule) =>
      (rule.working?.(log) ?? []).map((step): Step => ({
        ...step,
        meaning: `${rule === doyle ? "Doyle" : "Scribner"}: ${step.meaning.charAt(0).toLowerCase()}${step.meaning.slice(1)}`,
      })),
    );
    const both = rules.map((rule) => shown(rule.scale(log))).join(" or ");
    return [...steps, { sum: both, meaning: "The larger of the two", value: larger, unit: "bf" }];
  },

  round: (volume) => toNearest(1, volume),
};
