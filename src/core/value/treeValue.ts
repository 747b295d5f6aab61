import { requireBetween, requireNotNegative } from "../basis/require";
import { shareForPercent } from "../basis/shareForPercent";
import type { Source } from "../basis/source";
import { dollars, percent, type BoardFeet, type Dollars, type DollarsPerMbf, type Percent } from "../basis/units";

const LEAST_CULL = 1; // %; nobody culls less, a choice of ours

/**
 * What a standing tree brings at a stumpage price.
 *
 *     value = V / 1000 p (1 - cull)
 *
 *     V     volume, by the log rule that the price is for    [bf]
 *     p     price                                            [$/MBF]
 *     cull  share of the volume that is not paid for
 *
 * @throws InvalidInput when the volume or the price is below 0, or the cull is not 0 or from 1 to 100 %
 */
export function treeValue(volume: BoardFeet, price: DollarsPerMbf, cull: Percent = percent(0)): Dollars {
  requireNotNegative("Volume", volume, "bf");
  requireNotNegative("Price", price, "$ per MBF");
  requireBetween("Cull", cull, 0, 100, "%");
  if (cull > 0 && cull < LEAST_CULL) throw shareForPercent("Cull", cull, ", or leave it out for none");
  return dollars((volume / 1000) * price * (1 - cull / 100));
}

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Stumpage value",
    where: "thousands of board feet times their price, less cull; no single source",
    standing: "common practice",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "Least cull",
    where: "a cull between 0 and 1 % is asked about: it is likely a share typed for a percent",
    standing: "choice of ours",
  },
];
