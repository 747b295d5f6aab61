import { stemEquations } from "../core/tree/national/stemEquations";
import { partLeft, stemParts, wholeWood } from "../core/tree/national/stemParts";
import { stemVolume as volumeOf } from "../core/tree/national/stemVolume";
import { answered, eachCell } from "./shell/answers";
import { conditionOf, standOf, totalHeight } from "./shell/heightTrees";
import { chosenOr, measuredDbh } from "./shell/measuredIn";
import { isLeftOut } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { speciesReading } from "./shell/speciesReading";
import { unitSystem } from "./shell/unitSystem";

/**
 * Parts of a stem.
 * @customenum {string}
 */
export enum PartOfStem {
  /** All wood from the ground to the tip. */
  Wood = "Wood",
  /** All bark. */
  Bark = "Bark",
  /** All wood and bark. */
  WoodAndBark = "Wood and bark",
  /** Wood from a 1 foot stump to a 4 inch top; nothing in trees under 5 inches. */
  Merchantable = "Merchantable wood",
  /** Wood from a 1 foot stump to a 7 inch top in softwoods of 9 inches or more, 9 inch top in hardwoods of 11 or more. */
  Sawlog = "Sawlog wood",
}

/**
 * How the stand began.
 * @customenum {string}
 */
export enum OriginOfStand {
  /** From seed or sprouts where it stands. */
  Natural = "Natural",
  /** Planted. */
  Planted = "Planted",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum StemUnits {
  /** Inches, feet, cubic feet. */
  Imperial = "imperial",
  /** Centimeters, meters, cubic meters. */
  Metric = "metric",
}

/**
 * Cubic feet in the stem of a tree by its total height, after the national volume equations of the Forest Service.
 * @customfunction STEMVOLUME
 * @param species Common name or inventory code of the species.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip, in feet (meters when metric).
 * @param [part] Part of the stem: Wood, Bark, Wood and bark, Merchantable wood or Sawlog wood. Left out: Wood.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [cull_pct] Rotten or missing wood, in percent; bark has none. Left out: 0.
 * @param [broken_at] Height at which the top is broken off, in feet (meters when metric); the total height is then what it was whole. Left out: not broken.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Cubic feet (cubic meters when metric), in the shape that was given.
 */
export function stemVolume(
  species: any[][],
  dbh: any[][],
  height: any[][],
  part?: PartOfStem,
  division?: string,
  origin?: OriginOfStand,
  cull_pct?: any[][],
  broken_at?: any[][],
  units?: StemUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const asked = chosenOr("Part", part, stemParts, wholeWood);
    const stand = standOf(division, origin);
    const trees = {
      equations: speciesReading(species, (one) => stemEquations(one, stand)),
      dbh: measuredDbh(dbh, system),
      height: totalHeight(height, system),
    };
    if (isLeftOut(cull_pct) && isLeftOut(broken_at)) {
      return eachCell(
        trees,
        saidIn(system, (tree) => volumeOf(tree.equations, tree, asked) * system.cubic.perOurs),
      );
    }
    return eachCell(
      { ...trees, ...conditionOf(cull_pct, broken_at, system) },
      saidIn(system, ({ equations, dbh, height, cull, brokenAt }) => {
        const condition = { cull, ...(brokenAt > 0 && { brokenAt }) };
        return partLeft(asked, equations, { dbh, height }, condition) * system.cubic.perOurs;
      }),
    );
  });
}
