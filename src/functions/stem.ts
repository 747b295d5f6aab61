import { InvalidInput } from "../core/basis/problem";
import { told } from "../core/basis/telling";
import { feet, inches } from "../core/basis/units";
import { barkSides, insideBark as insideOfBark } from "../core/tree/national/barkSides";
import { LOWEST, stemDiameter as diameterOf } from "../core/tree/national/stemDiameter";
import { MOST_DBH, MOST_HEIGHT, stemEquations } from "../core/tree/national/stemEquations";
import { stemHeight as heightOf, THINNEST } from "../core/tree/national/stemHeight";
import { partLeft, stemParts, wholeWood } from "../core/tree/national/stemParts";
import { stemVolume as volumeOf } from "../core/tree/national/stemVolume";
import { treeWeight as weightOf, weightLeft } from "../core/tree/national/treeWeight";
import { aboveGroundDry, treeWeights } from "../core/tree/national/treeWeights";
import { answered, eachCell } from "./shell/answers";
import { conditionOf, standOf, totalHeight } from "./shell/heightTrees";
import { chosenOr, measuredDbh, measuredIn } from "./shell/measuredIn";
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
 * On which side of the bark a diameter is meant.
 * @customenum {string}
 */
export enum SideOfBark {
  /** Wood only. */
  Inside = "Inside",
  /** Wood and bark. */
  Outside = "Outside",
}

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
  /** Inches, feet, cubic feet, pounds. */
  Imperial = "imperial",
  /** Centimeters, meters, cubic meters, kilograms. */
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

/**
 * Diameter of a standing stem at a height above the ground, after the national taper equation of the Forest Service.
 * @customfunction STEMDIAMETER
 * @param species Common name or inventory code of the species.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip, in feet (meters when metric).
 * @param at_height Height above the ground at which the diameter is wanted, in feet (meters when metric).
 * @param [bark] Side of the bark: Inside or Outside. Left out: Inside.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Inches (cm when metric), in the shape that was given.
 */
export function stemDiameter(
  species: any[][],
  dbh: any[][],
  height: any[][],
  at_height: any[][],
  bark?: SideOfBark,
  division?: string,
  origin?: OriginOfStand,
  units?: StemUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const side = chosenOr("Bark", bark, barkSides, insideOfBark);
    const stand = standOf(division, origin);
    const trees = {
      equations: speciesReading(species, (one) => stemEquations(one, stand)),
      dbh: measuredDbh(dbh, system),
      height: totalHeight(height, system),
      at: measuredIn(at_height, "At height", system.distance, feet, LOWEST, MOST_HEIGHT),
    };
    return eachCell(
      trees,
      saidIn(system, (tree) => {
        if (tree.at > tree.height) {
          throw new InvalidInput((telling) => {
            const [low, given] = [LOWEST, tree.at].map((height) => telling.number(height, "ft"));
            return `At height should be between ${low} and ${told(telling, tree.height, "ft")}. You have ${given}.`;
          });
        }
        return diameterOf(tree.equations, tree, tree.at, side) * system.diameter.perOurs;
      }),
    );
  });
}

/**
 * Height above the ground at which a standing stem has tapered to a diameter, such as the top of a product, after the national taper equation of the Forest Service.
 * @customfunction STEMHEIGHT
 * @param species Common name or inventory code of the species.
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param height Total height, from the ground to the tip, in feet (meters when metric).
 * @param diameter Diameter that the stem has there, in inches (cm when metric).
 * @param [bark] Side of the bark on which the diameter is meant: Inside or Outside. Left out: Inside.
 * @param [division] Bailey ecodivision, such as 220 or M210. Left out: the species at large.
 * @param [origin] How the stand began: Natural or Planted; matters to slash and loblolly pine only. Left out: Natural.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Feet above the ground (meters when metric), stump included, in the shape that was given.
 */
export function stemHeight(
  species: any[][],
  dbh: any[][],
  height: any[][],
  diameter: any[][],
  bark?: SideOfBark,
  division?: string,
  origin?: OriginOfStand,
  units?: StemUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const side = chosenOr("Bark", bark, barkSides, insideOfBark);
    const stand = standOf(division, origin);
    const trees = {
      equations: speciesReading(species, (one) => stemEquations(one, stand)),
      dbh: measuredDbh(dbh, system),
      height: totalHeight(height, system),
      top: measuredIn(diameter, "Diameter", system.diameter, inches, THINNEST, MOST_DBH),
    };
    return eachCell(
      trees,
      saidIn(system, (tree) => heightOf(tree.equations, tree, tree.top, side) * system.distance.perOurs),
    );
  });
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
  origin?: OriginOfStand,
  cull_pct?: any[][],
  broken_at?: any[][],
  units?: StemUnits,
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
