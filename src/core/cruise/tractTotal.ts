import { requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import type { Acres } from "../basis/units";
import { withMargin, type Estimate } from "./estimate";

export const sources: readonly Source[] = [
  {
    author: "K. Iles",
    year: "n.d.",
    title: "newsletter article on errors of area, title not noted",
    where: "an error in the acres is extra, and in proportion",
    url: "http://john-bell-associates.com/regular/regular_online14.htm",
    standing: "read",
  },
];

/**
 * Total of a tract from the amount on an acre.
 *
 *     T = y A     m = sqrt((A m_y)^2 + (y m_A)^2)
 *
 *     T, m    total and its margin of error
 *     y, m_y  amount per acre and its margin of error, at the same confidence
 *     A, m_A  acres and their margin of error   [ac]
 *
 * The two errors are independent, one from the plots and one from the map. The product of the two margins, which the
 * exact variance of a product would take off, is left out: it is far below what either is known to. With acres that
 * are known for sure, m_A = 0, the percentage of error stays that of the acre.
 *
 * @throws InvalidInput when a margin is below 0 or the acres are not above 0
 */
export function tractTotal(perAcre: number, margin: number, acres: Acres, acresMargin: Acres): Estimate {
  requireNotNegative("Margin", margin);
  requirePositive("Acres", acres, "ac");
  requireNotNegative("Margin of the acres", acresMargin, "ac");
  return withMargin(perAcre * acres, Math.hypot(acres * margin, perAcre * acresMargin));
}
