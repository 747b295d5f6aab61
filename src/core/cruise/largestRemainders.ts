/**
 * Shares out a whole number in proportion, so that the parts add up to it: everyone gets the whole part of his share,
 * and what is left goes one each to the largest remainders. Rounding each share by itself need not add up.
 */
export function largestRemainders(total: number, weights: readonly number[]): number[] {
  const all = weights.reduce((sum, one) => sum + one, 0);
  const shares = weights.map((weight) => (total * weight) / all);
  const parts = shares.map(Math.floor);
  const left = total - parts.reduce((sum, one) => sum + one, 0);
  const byRemainder = shares
    .map((share, place) => ({ place, rest: share - Math.floor(share) }))
    .sort((one, other) => other.rest - one.rest || one.place - other.place);
  for (const { place } of byRemainder.slice(0, left)) parts[place] = (parts[place] as number) + 1;
  return parts;
}
