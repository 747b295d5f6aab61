/** A number as a person would write it: no exponent, no more than six significant decimals. */
export function shown(value: number): string {
  if (!Number.isFinite(value)) return "a number too large to use";
  if (Math.abs(value) >= 1e15) return value.toExponential(3);
  return String(Number(value.toFixed(6)));
}
