import { InvalidInput } from "./problem";
import { shown } from "./shown";

/**
 * What to say of a percent so small that it was likely typed as a share: a cell in percent format holds 0.15 where it
 * shows 15 %.
 *
 * @param otherwise what the sentence ends in, for who means the small figure
 */
export function shareForPercent(what: string, given: number, otherwise = ""): InvalidInput {
  const [share, whole] = [shown(given), shown(given * 100)];
  return new InvalidInput(`${what} is ${share}: ${share} %, or ${whole} %? Type ${whole} for ${whole} %${otherwise}.`);
}
