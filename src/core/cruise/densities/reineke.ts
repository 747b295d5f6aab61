import type { Source } from "../../basis/source";
import { quadraticMeanDiameter } from "../quadraticMeanDiameter";
import { overTrees, type DensityMeasure } from "../standDensity";

const SLOPE = 1.605; // of trees per acre on diameter, both as logarithms [1]
const REFERENCE = 10; // in, the diameter that trees are brought to [1]

const reinekes: Source = {
  author: "L. H. Reineke",
  year: "1933",
  title: "Perfecting a stand-density index for even-aged forests, Journal of Agricultural Research 46:627-638",
  where: "slope of 1.605 and 10 in as the diameter compared at; first pages",
  url: "https://studylib.net/doc/10781563/a--stand-density--index--for--even-",
  standing: "read",
};

/**
 * Stand density index: how many trees of 10 in on an acre would be as crowded as the stand is.
 *
 *     SDI = N (Dq / 10)^1.605
 *
 *     N   trees per acre                            [1/ac]
 *     Dq  quadratic mean diameter                   [in]
 *
 * The number goes with the least diameter that was tallied, which should be said beside it.
 *
 * [1] L. H. Reineke, Journal of Agricultural Research 46, 1933
 */
export const reineke: DensityMeasure = {
  id: "reineke",
  title: "SDI",
  aliases: ["Stand density index", "Reineke"],
  perLand: true,
  says: "trees of 10 in (25.4 cm) that would be as crowded, by the mean diameter",
  sources: [reinekes],
  of: (stand) => overTrees(stand, () => 1) * (quadraticMeanDiameter(stand.dbh, stand.trees) / REFERENCE) ** SLOPE,
};

/**
 * Stand density index tree by tree, for stands of many sizes: SDI = sum((d / 10)^1.605) over the trees of an acre.
 * The same as by the mean diameter when all trees are alike, and below it otherwise, since 1.605 is less than 2.
 * Others sum with 1.6 [2]; here both forms share the printed slope, so that they can be compared.
 *
 * [1] L. H. Reineke, 1933; [2] J. N. Long and T. W. Daniel, 1990, from memory
 */
export const reinekeBySummation: DensityMeasure = {
  id: "reinekeBySummation",
  title: "SDI by summation",
  aliases: ["Summation SDI", "Stand density index by summation"],
  perLand: true,
  says: "the same tree by tree, steadier where sizes are mixed",
  sources: [
    reinekes,
    {
      author: "J. N. Long and T. W. Daniel",
      year: "1990",
      title: "Assessment of growing stock in uneven-aged stands, Western Journal of Applied Forestry 5",
      where: "summation over trees",
      standing: "from memory",
    },
  ],
  of: (stand) => overTrees(stand, (dbh) => (dbh / REFERENCE) ** SLOPE),
};
