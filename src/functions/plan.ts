import { acres as inAcres, percent, squareFeetPerAcre } from "../core/basis/units";
import { gridSpacing as spacingOf } from "../core/cruise/gridSpacing";
import { measureTos, toCenter } from "../core/cruise/measureTo";
import { plotRadius as radiusOf } from "../core/cruise/plotRadius";
import { plotRadiusFactor as factorOf } from "../core/cruise/plotRadiusFactor";
import { STEEPEST } from "../core/tree/horizontalDistance";
import { answered, eachCell } from "./shell/answers";
import { boundsIn, chosenOr, measuredIn } from "./shell/measuredIn";
import { oneNumber, optionalNumber } from "./shell/readings";
import { unitSystem } from "./shell/unitSystem";

/**
 * Where on the tree a distance ends.
 * @customenum {string}
 */
export enum RadiusTo {
  /** The middle of the stem. */
  Center = "Center",
  /** The near side of the stem. */
  Face = "Face",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum PlanUnits {
  /** Inches, feet, acres, square feet per acre. */
  Imperial = "imperial",
  /** Centimeters, meters, hectares, square meters per hectare. */
  Metric = "metric",
}

/**
 * Distance between the points of a square grid that puts a number of plots on a tract.
 * @customfunction GRIDSPACING
 * @param acres Size of the tract, in acres (hectares when metric).
 * @param plots Number of plots wanted.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Feet (meters when metric) between points and between lines.
 */
export function gridSpacing(acres: any, plots: any, units?: PlanUnits): number {
  return answered(() => {
    const { area, distance } = unitSystem(units);
    const tract = inAcres(oneNumber(acres, "Acres", boundsIn(area, 0.01, 1e6)) / area.perOurs);
    const wanted = oneNumber(plots, "Plots", { unit: "plots", low: 1, high: 1e5 });
    return spacingOf(tract, wanted) * distance.perOurs;
  });
}

/**
 * Radius of a round plot of fixed size; on a slope, the radius along the slope that keeps the level size.
 * @customfunction PLOTRADIUS
 * @param plot_size Plot size, in acres (hectares when metric).
 * @param [slope_pct] Slope, in percent. Left out: 0.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Feet (meters when metric), in the shape that was given.
 */
export function plotRadius(plot_size: any[][], slope_pct?: any[][], units?: PlanUnits): any[][] {
  return answered(() => {
    const { area, distance } = unitSystem(units);
    const plot = {
      size: measuredIn(plot_size, "Plot size", area, inAcres, 0.0001, 100),
      slope: optionalNumber(slope_pct, "Slope", percent, { unit: "%", low: -STEEPEST, high: STEEPEST }),
    };
    return eachCell(plot, ({ size, slope }) => radiusOf(size, slope) * distance.perOurs);
  });
}

/**
 * How far off a tree may stand at a sampling point, for each inch of its DBH.
 * @customfunction PLOTRADIUSFACTOR
 * @param baf Basal area factor of the gauge, in square feet per acre (square meters per hectare when metric).
 * @param [measure_to] Where the distance ends on the tree: Center or Face. Left out: Center.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Feet per inch of DBH (meters per cm when metric), in the shape that was given.
 */
export function plotRadiusFactor(baf: any[][], measure_to?: RadiusTo, units?: PlanUnits): any[][] {
  return answered(() => {
    const { areaPerLand, distance, diameter } = unitSystem(units);
    const measureTo = chosenOr("Measure to", measure_to, measureTos, toCenter);
    const gauge = { baf: measuredIn(baf, "BAF", areaPerLand, squareFeetPerAcre, 0.5, 500) };
    return eachCell(gauge, ({ baf }) => (factorOf(baf, measureTo) * distance.perOurs) / diameter.perOurs);
  });
}
