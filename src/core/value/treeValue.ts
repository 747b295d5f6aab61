import { requireBetween, requireNotNegative } from "../basis/require";
import type { Source } from "../basis/source";
import { dollars, percent, type BoardFeet, type Dollars, type DollarsPerMbf, type Percent } from "../basis/units";

/**
 * What a standing tree brings at a stumpage price.
 *
 *     value = V / 1000 p (1 - cull)
 *
 *     V     volume, by the log rule that the price is for    [bf]
 *     p     price                                            [$/MBF]
 *     cull  share of the volume that is not paid for
 *
 * @throws InvalidInput when the volume or the price is below 0, or the cull not between 0 and 100 %
 */
export function treeValue(volume: BoardFeet, price: DollarsPerMbf, cull: Percent = percent(0)): Dollars {
  requireNotNegative("Volume", volume, "bf");
  requireNotNegative("Price", price, "$ per MBF");
  requireBetween("Cull", cull, 0, 100, "%");
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
];
