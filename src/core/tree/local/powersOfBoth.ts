import type { LocalForm } from "./localForm";

/**
 * A power of the diameter and a power of the height, fitted in logarithms.
 *
 *     V = a D^b H^c                                             [1]
 *     ln V = ln a + b ln D + c ln H, by least squares
 *     a is then multiplied by exp(s^2 / 2)                      [2]
 *
 *     V     volume, in whatever unit the felled trees have
 *     D, H  diameter at breast height and height, likewise
 *     s^2   residual variance of ln V
 *
 * Without the factor the equation would give the middle tree of each size, which is a little below the mean.
 *
 * [1] F. X. Schumacher and F. S. Hall 1933, [2] G. L. Baskerville 1972, below
 */
export const powersOfBoth: LocalForm = {
  title: "Powers of D and H",
  aliases: ["Powers", "Logarithmic", "Schumacher-Hall", "a D^b H^c", "V = a D^b H^c"],
  equation: "V = a D^b H^c",
  sources: [
    {
      author: "F. X. Schumacher and F. S. Hall",
      year: "1933",
      title: "Logarithmic expression of timber-tree volume, Journal of Agricultural Research 47:719-734",
      where: "[1] the equation",
      standing: "from memory",
    },
    {
      author: "G. L. Baskerville",
      year: "1972",
      title:
        "Use of logarithmic regression in the estimation of plant biomass, Canadian Journal of Forest Research 2:49-53",
      where: "[2] half the residual variance is added before the logarithm is undone",
      standing: "from memory",
    },
  ],
  terms: ({ dbh, height }) => [1, Math.log(dbh), Math.log(height)],
  fitted: Math.log,
  correction: (variance) => Math.exp(variance / 2),
  coefficients: ([lnA = NaN, b = NaN, c = NaN], correction) => ({ a: Math.exp(lnA) * correction, b, c }),
  perFitted: (volume) => volume,
  volume: ({ a, b, c = NaN }, dbh, height) => a * dbh ** b * height ** c,
};
