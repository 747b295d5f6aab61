import { SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER } from "../../basis/circle";
import { quadraticMeanDiameter } from "../quadraticMeanDiameter";
import { overTrees, type DensityMeasure } from "../standDensity";

/**
 * Relative density of a stand.
 *
 *     RD = G / sqrt(Dq)
 *
 *     G   basal area                  [ft2/ac]
 *     Dq  quadratic mean diameter     [in]
 *
 * Made for Douglas-fir, in these very units: with metric ones it would be another number, so it stays as it is.
 *
 * [1] R. O. Curtis, Forest Science 28(1):92-94, 1982
 */
export const relativeDensity: DensityMeasure = {
  id: "relativeDensity",
  title: "Relative density",
  aliases: ["RD", "Curtis"],
  perLand: false,
  says: "basal area over the root of the mean diameter, in ft2/ac and inches",
  sources: [
    {
      author: "R. O. Curtis",
      year: "1982",
      title: "A simple index of stand density for Douglas-fir, Forest Science 28(1):92-94",
      where: "abstract and opening",
      url: "https://studylib.net/doc/11340916",
      standing: "read",
    },
  ],
  of: (stand) =>
    overTrees(stand, (dbh) => SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER * dbh ** 2) /
    Math.sqrt(quadraticMeanDiameter(stand.dbh, stand.trees)),
};
