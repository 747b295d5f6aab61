/** Plots of just this mean and sample variance, for examples that print no plot by itself. */
export function plotsWith(plots: number, mean: number, variance: number): number[] {
  const middle = (plots - 1) / 2;
  const spread = Array.from({ length: plots }, (_, i) => i - middle);
  const own = spread.reduce((sum, one) => sum + one ** 2, 0) / (plots - 1);
  return spread.map((one) => mean + one * Math.sqrt(variance / own));
}
