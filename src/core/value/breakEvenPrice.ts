import { OutOfRange } from "../basis/problem";
import { requireNotNegative } from "../basis/require";
import type { Source } from "../basis/source";
import { dollarsPerMbf, type Dollars, type DollarsPerMbf } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "S. Nagubadi, R. D. Fight, R. J. Barbour",
    year: "2003",
    title: "Valuing a log: alternative approaches, PNW-RN-541",
    where: "read in part: a log is worth its products less the costs to make them; solved here for the product price",
    standing: "read",
  },
];

/**
 * Lumber price at which sawing the logs at home brings as much as selling them.
 *
 *     P = (L + C) / Q
 *
 *     P  break-even price                                  [$/MBF of lumber]
 *     L  what the logs would bring                         [$]
 *     C  all costs of turning them into lumber and selling [$]
 *     Q  lumber that can be sold, after trim and degrade   [MBF]
 *
 * @throws InvalidInput when a number is below 0
 * @throws OutOfRange when there is no lumber
 */
export function breakEvenPrice(logValue: Dollars, costs: Dollars, lumber: number): DollarsPerMbf {
  requireNotNegative("Log value", logValue, "$");
  requireNotNegative("Costs", costs, "$");
  requireNotNegative("Lumber", lumber, "MBF");
  if (lumber === 0) throw new OutOfRange("Nothing to work on yet.");
  return dollarsPerMbf((logValue + costs) / lumber);
}
