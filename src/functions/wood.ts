import { KG_PER_LB } from "../core/basis/metric";
import { boardFeet, inches, percent } from "../core/basis/units";
import { driedSize as sizeDried, flat, grains } from "../core/lumber/driedSize";
import { equilibriumMoisture } from "../core/lumber/equilibriumMoisture";
import { lumberWeight as weightOf } from "../core/lumber/lumberWeight";
import { findWood } from "../core/lumber/wood";
import { answered, eachCell } from "./shell/answers";
import { chosenOr } from "./shell/measuredIn";
import { moistures } from "./shell/moistures";
import { measured, names } from "./shell/readings";
import { temperatures } from "./shell/temperatures";
import { unitSystem } from "./shell/unitSystem";

/**
 * Which way a size lies in the board.
 * @customenum {string}
 */
export enum GrainName {
  /** Along the growth rings: width of a flat-sawn board, thickness of a quarter-sawn one */
  flat = "Flat",
  /** Across the growth rings: width of a quarter-sawn board, thickness of a flat-sawn one */
  quarter = "Quarter",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum WoodUnits {
  /** Pounds, degrees Fahrenheit */
  imperial = "imperial",
  /** Kilograms, degrees Celsius */
  metric = "metric",
}

/**
 * Width or thickness of a piece of wood after its moisture content has changed, by the average shrinkage of its species.
 * @customfunction DRIEDSIZE
 * @param size Width or thickness before, in inches or any other unit.
 * @param species Common name, scientific name or inventory code of the species.
 * @param from_mc_pct Moisture content before, in percent, or Green.
 * @param to_mc_pct Moisture content afterwards, in percent, 1 or more.
 * @param [grain] "Flat" for the width of a flat-sawn board, "Quarter" for the width of a quarter-sawn one; for a thickness, the other. Left out: Flat.
 * @returns Size afterwards, in the unit that was given and in the shape that was given.
 */
export function driedSize(
  size: any[][],
  species: any[][],
  from_mc_pct: any[][],
  to_mc_pct: any[][],
  grain?: GrainName,
): any[][] {
  return answered(() => {
    const lies = chosenOr("Grain", grain, grains, flat);
    return eachCell(
      {
        size: measured(size, "Size", inches, { unit: "", low: 0.01, high: 10_000 }),
        species: names(species, "Species"),
        from: moistures(from_mc_pct, "Moisture before"),
        to: moistures(to_mc_pct, "Moisture afterwards"),
      },
      (piece) => {
        const wood = findWood(piece.species);
        const moisture = (given: typeof piece.from) => (given === "green" ? wood.green : given);
        return sizeDried(piece.size, lies.shrinkageOf(wood), moisture(piece.from), moisture(piece.to));
      },
    );
  });
}

/**
 * Moisture content at which wood settles in air of a given temperature and humidity.
 * @customfunction EQUILIBRIUMMC
 * @param temperature Temperature of the air, in degrees Fahrenheit (Celsius when metric), 30 to 130 F.
 * @param humidity_pct Relative humidity, in percent, 5 to 95.
 * @param [units] "imperial" (Fahrenheit) or "metric" (Celsius). Left out: imperial.
 * @returns Moisture content, in percent of the ovendry weight, in the shape that was given.
 */
export function equilibriumMc(temperature: any[][], humidity_pct: any[][], units?: WoodUnits): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return eachCell(
      {
        humidity: measured(humidity_pct, "Humidity", percent, { unit: "%", low: 1, high: 100 }),
        temperature: temperatures(temperature, system),
      },
      (air) => equilibriumMoisture(air.temperature, air.humidity),
    );
  });
}

/**
 * Weight of lumber of a species at a moisture content, by the average of the species.
 * @customfunction LUMBERWEIGHT
 * @param board_feet Board feet of wood that is there: actual measures, since a nominal tally holds less wood than it says.
 * @param species Common name, scientific name or inventory code of the species.
 * @param mc_pct Moisture content, in percent of the ovendry weight, or Green for the average of green wood.
 * @param [units] "imperial" (pounds) or "metric" (kilograms). Left out: imperial.
 * @returns Pounds (kilograms), in the shape that was given.
 */
export function lumberWeight(board_feet: any[][], species: any[][], mc_pct: any[][], units?: WoodUnits): any[][] {
  return answered(() => {
    const perPound = unitSystem(units).metric ? KG_PER_LB : 1;
    return eachCell(
      {
        boardFeet: measured(board_feet, "Board feet", boardFeet, { unit: "bf", low: 0.01, high: 1e9 }),
        species: names(species, "Species"),
        moisture: moistures(mc_pct, "Moisture content"),
      },
      (lumber) => {
        const wood = findWood(lumber.species);
        return weightOf(lumber.boardFeet, wood, lumber.moisture === "green" ? wood.green : lumber.moisture) * perPound;
      },
    );
  });
}
