import { InvalidInput } from "../basis/problem";
import { shown } from "../basis/require";
import type { Source } from "../basis/source";
import type { Dollars } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Ranks only where ranges stand apart",
    where: "core/value/compareWays",
    standing: "choice of ours",
  },
];

/** One way to use the timber, such as selling it standing, with what it brings at most and at least. */
export interface Way {
  readonly name: string;
  readonly value: Dollars;
  readonly low: Dollars;
  readonly high: Dollars;
}

export interface RankedWay extends Way {
  /**
   * 1 for the best. A way whose range meets another's has no rank, since neither can be called the better one;
   * one with nothing but zeros has not been worked out yet and is not compared.
   */
  readonly rank: number | "Too close to call" | "No figures yet";
}

/**
 * Ranks ways by value, but only where a way's range stands apart from every other: a higher figure whose range
 * meets the next one's is no winner. Keeps the order given.
 *
 * @throws InvalidInput when a value does not lie within its range
 */
export function compareWays(ways: readonly Way[]): readonly RankedWay[] {
  for (const { name, value, low, high } of ways) {
    if (low <= value && value <= high) continue;
    throw new InvalidInput(
      `The value of "${name.slice(0, 60)}" should lie between its low and its high, ${shown(low)} and ${shown(high)} $. You have ${shown(value)}.`,
    );
  }
  const compared = ways.filter(({ low, high }) => low !== 0 || high !== 0);
  return ways.map((way) => {
    if (!compared.includes(way)) return { ...way, rank: "No figures yet" };
    const others = compared.filter((other) => other !== way);
    const meets = others.some((other) => other.low <= way.high && way.low <= other.high);
    const better = others.filter((other) => other.value > way.value).length;
    return { ...way, rank: meets ? "Too close to call" : better + 1 };
  });
}
