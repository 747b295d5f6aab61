import { requireNotNegative } from "../basis/require";
import type { Source } from "../basis/source";
import { dollars, dollarsPerMbf, type Dollars, type DollarsPerMbf } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Income less costs",
    where: "lumber value less pay and other costs; per hour and per MBF by division",
    standing: "common practice",
  },
];

export interface HomeSawing {
  readonly lumberValue: Dollars;
  readonly hours: number;
  /** Pay the owner asks for an hour; 0 is allowed and leaves his pay in the net. [$/h] */
  readonly payPerHour: number;
  readonly otherCosts: Dollars;
  /** [MBF] */
  readonly lumber?: number;
}

export interface HomeSawnNet {
  readonly net: Dollars;
  /** Left out without hours. [$/h] */
  readonly perHour?: number;
  /** Left out without a lumber tally. */
  readonly perMbf?: DollarsPerMbf;
}

/**
 * What is left of home-sawn lumber when work and costs are paid.
 *
 *     N = S - H P - C
 *
 *     N  net                          [$], below 0 for a loss
 *     S  value of the lumber          [$]
 *     H  hours, P  pay for an hour    [h], [$/h]
 *     C  all other costs              [$]
 *
 * The net for an hour, N / H, comes on top of the pay already taken; with no pay taken it is what an hour earned.
 *
 * @throws InvalidInput when a number is below 0
 */
export function homeSawnNet({ lumberValue, hours, payPerHour, otherCosts, lumber = 0 }: HomeSawing): HomeSawnNet {
  requireNotNegative("Lumber value", lumberValue, "$");
  requireNotNegative("Hours", hours);
  requireNotNegative("Pay per hour", payPerHour, "$");
  requireNotNegative("Other costs", otherCosts, "$");
  requireNotNegative("Lumber", lumber, "MBF");
  const net = lumberValue - hours * payPerHour - otherCosts;
  return {
    net: dollars(net),
    ...(hours > 0 && { perHour: net / hours }),
    ...(lumber > 0 && { perMbf: dollarsPerMbf(net / lumber) }),
  };
}
