import type { LocalForm } from "./localForm";

/**
 * The combined variable: volume on a straight line over D2 H.
 *
 *     V = a + b D^2 H                                           [1]
 *
 *     V     volume, in whatever unit the felled trees have
 *     D, H  diameter at breast height and height, likewise
 *
 * Every felled tree weighs the same in the fit.
 *
 * [1] S. H. Spurr 1952, below
 */
export const combinedVariable: LocalForm = {
  title: "Combined variable",
  aliases: ["Combined", "a + b D2H", "V = a + b D2 H"],
  equation: "V = a + b D2 H",
  sources: [
    {
      author: "S. H. Spurr",
      year: "1952",
      title: "Forest Inventory, Ronald Press",
      where: "[1] the combined-variable volume equation, as texts on measurement repeat it",
      standing: "from memory",
    },
  ],
  terms: ({ dbh, height }) => [1, dbh * dbh * height],
  fitted: (volume) => volume,
  correction: () => 1,
  coefficients: ([a = NaN, b = NaN]) => ({ a, b }),
  perFitted: () => 1,
  volume: ({ a, b }, dbh, height) => a + b * dbh * dbh * height,
};
