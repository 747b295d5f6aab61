import { InvalidInput } from "../basis/problem";
import { requireNotNegative, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { dollars, type Dollars, type DollarsPerMbf } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Range of a product of two ranges",
    where: "core/value/valueRange: low times low to high times high, the widest the two ranges allow",
    standing: "choice of ours",
  },
];

export interface ValueRange {
  readonly value: Dollars;
  readonly low: Dollars;
  readonly high: Dollars;
}

export interface Priced {
  /** Estimated volume. [MBF] */
  readonly volume: number;
  /** Its margin of error, half the width of its range. [MBF] */
  readonly margin: number;
  readonly price: DollarsPerMbf;
  /** Left out: the price itself. */
  readonly priceLow?: DollarsPerMbf;
  readonly priceHigh?: DollarsPerMbf;
}

/**
 * Value of a volume that is known with a margin, at a price that is known within bounds.
 *
 *     value = V P,   low = max(0, V - M) P_low,   high = (V + M) P_high
 *
 *     V, M  volume and its margin         [MBF]
 *     P     price, its low and its high   [$/MBF]
 *
 * The range is the widest that the two allow: a low volume sold low, a high volume sold high. It is no confidence
 * interval, since a low and a high price have no stated probability. A margin larger than the volume leaves a low
 * value of 0, because there is no negative timber.
 *
 * @throws InvalidInput when a number is below 0, or the price does not lie between its low and its high
 */
export function valueRange({ volume, margin, price, priceLow = price, priceHigh = price }: Priced): ValueRange {
  requireNotNegative("Volume", volume, "MBF");
  requireNotNegative("Margin", margin, "MBF");
  requireNotNegative("Price", price, "$ per MBF");
  requireNotNegative("Low price", priceLow, "$ per MBF");
  requireNotNegative("High price", priceHigh, "$ per MBF");
  if (priceLow > priceHigh) throw new InvalidInput("Swap the low and high price.");
  if (price < priceLow || price > priceHigh) {
    throw new InvalidInput(
      `The price should lie between the low and the high price, ${shown(priceLow)} and ${shown(priceHigh)} $ per MBF. You have ${shown(price)}.`,
    );
  }
  return {
    value: dollars(volume * price),
    low: dollars(Math.max(0, volume - margin) * priceLow),
    high: dollars((volume + margin) * priceHigh),
  };
}
