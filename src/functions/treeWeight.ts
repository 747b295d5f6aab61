import { treeWeight as weightOf, weightLeft } from "../core/tree/national/treeWeight";
import { aboveGroundDry, treeWeights } from "../core/tree/national/treeWeights";
import { answered, eachCell } from "./shell/answers";
import { conditionOf, standOf, totalHeight } from "./shell/heightTrees";
import { chosenOr, measuredDbh } from "./shell/measuredIn";
import { isLeftOut } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { speciesReading } from "./shell/speciesReading";
import { unitSystem } from "./shell/unitSystem";

/**
 * Weights of a tree.
 * @customenum {string}
 */
export enum WeightOfTree {
  /** Stem, bark and branches without leaves, oven-dry. */
  AboveGround = "Above ground, dry",
  /** Wood of the stem, oven-dry. */
  StemDry = "Stem wood, dry",
  /** Wood of the stem with the water of a fresh log. */
  StemGreen = "Stem wood, green",
  /** Carbon in stem, bark and branches. */
  Carbon = "Carbon",
}

/**
 * How the stand began.
 * @customenum {string}
 */
export enum OriginOfTree {
  /** From seed or sprouts where it stands. */
  Natural = "Natural",
  /** Planted. */
  Planted = "Planted",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum WeightUnits {
  /** Inches, feet, pounds. */
  Imperial = "imperial",
  /** Centimeters, meters, kilograms. */
  Metric = "metric",
}

/**
 * Weight of a tree, after the national biomass equations of the Forest Service.
 * @customfunction TREEWEIGHT
 * @param species Common name or inventory code of the species.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip, in feet (meters when metric).
 * @param [component] Weight wanted: Above ground, dry; Stem wood, dry; Stem wood, green; or Carbon. Left out: Above ground, dry.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [cull_pct] Rotten wood, in percent; it keeps part of its weight. Stem wood only. Left out: 0.
 * @param [broken_at] Height at which the top is broken off, in feet (meters when metric); the total height is then what it was whole. Stem wood only. Left out: not broken.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Pounds (kilograms when metric), in the shape that was given.
 */
export function treeWeight(
  species: any[][],
  dbh: any[][],
  height: any[][],
  component?: WeightOfTree,
  division?: string,
  origin?: OriginOfTree,
  cull_pct?: any[][],
  broken_at?: any[][],
  units?: WeightUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const asked = chosenOr("Component", component, treeWeights, aboveGroundDry);
    const stand = standOf(division, origin);
    const sizes = { dbh: measuredDbh(dbh, system), height: totalHeight(height, system) };
    if (isLeftOut(cull_pct) && isLeftOut(broken_at)) {
      return eachCell(
        { ...sizes, weigh: speciesReading(species, (one) => asked.of(one, stand)) },
        saidIn(system, (tree) => weightOf(tree.weigh, tree) * system.weight.perOurs),
      );
    }
    return eachCell(
      {
        ...sizes,
        weigh: speciesReading(species, (one) => weightLeft(asked, one, stand)),
        ...conditionOf(cull_pct, broken_at, system),
      },
      saidIn(
        system,
        ({ weigh, dbh, height, cull, brokenAt }) =>
          weigh({ dbh, height }, { cull, ...(brokenAt > 0 && { brokenAt }) }) * system.weight.perOurs,
      ),
    );
  });
}
