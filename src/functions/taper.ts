import { InvalidInput } from "../core/basis/problem";
import { told } from "../core/basis/telling";
import { feet, inches } from "../core/basis/units";
import { barkSides, insideBark as insideOfBark } from "../core/tree/national/barkSides";
import { LOWEST, stemDiameter as diameterOf } from "../core/tree/national/stemDiameter";
import { MOST_DBH, MOST_HEIGHT, stemEquations } from "../core/tree/national/stemEquations";
import { stemHeight as heightOf, THINNEST } from "../core/tree/national/stemHeight";
import { answered, eachCell } from "./shell/answers";
import { standOf, totalHeight } from "./shell/heightTrees";
import { chosenOr, measuredDbh, measuredIn } from "./shell/measuredIn";
import { saidIn } from "./shell/saidIn";
import { speciesReading } from "./shell/speciesReading";
import { unitSystem } from "./shell/unitSystem";

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
 * How the stand began.
 * @customenum {string}
 */
export enum OriginOfStem {
  /** From seed or sprouts where it stands. */
  Natural = "Natural",
  /** Planted. */
  Planted = "Planted",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum TaperUnits {
  /** Inches, feet. */
  Imperial = "imperial",
  /** Centimeters, meters. */
  Metric = "metric",
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
  origin?: OriginOfStem,
  units?: TaperUnits,
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
  origin?: OriginOfStem,
  units?: TaperUnits,
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
