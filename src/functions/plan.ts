import { chosen } from "../core/basis/choices";
import { acres as inAcres, feet, percent, squareFeetPerAcre } from "../core/basis/units";
import { BAND, bafOptions as optionsFor, IMPERIAL_GAUGES, METRIC_GAUGES } from "../core/cruise/bafOptions";
import { gridPoints as pointsOn } from "../core/cruise/gridPoints";
import { gridSpacing as spacingOf } from "../core/cruise/gridSpacing";
import { measureTos, toCenter } from "../core/cruise/measureTo";
import { plotRadius as radiusOf } from "../core/cruise/plotRadius";
import { plotRadiusFactor as factorOf } from "../core/cruise/plotRadiusFactor";
import { plotGuides, plotsByAcres as guidedPlots } from "../core/cruise/plotsByAcres";
import { STEEPEST } from "../core/tree/horizontalDistance";
import { answered, eachCell, spilled } from "./shell/answers";
import { boundsIn, chosenOr, measuredIn } from "./shell/measuredIn";
import { oneNumber, oneText, optionalNumber } from "./shell/readings";
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
 * Printed guides that go by the acres alone.
 * @customenum {string}
 */
export enum PlotGuideName {
  /** Least number for a low-intensity inventory. */
  Nrcs = "NRCS minimum",
  /** Number of points as taught; it stops at 200 acres. */
  Teaching = "Teaching rule",
}

/**
 * Number of plots that a printed guide asks for, by the acres alone.
 * @customfunction PLOTSBYACRES
 * @param acres Size of the tract, in acres.
 * @param [guide] Guide: NRCS minimum or Teaching rule. Left out: NRCS minimum.
 * @returns Number of plots.
 */
export function plotsByAcres(acres: any, guide?: PlotGuideName): number {
  return answered(() =>
    guidedPlots(
      inAcres(oneNumber(acres, "Acres", { unit: "ac", low: 0.01, high: 1e6 })),
      chosen("Guide", oneText(guide, "Guide", PlotGuideName.Nrcs), plotGuides),
    ),
  );
}

/**
 * Basal area factors to choose from, with the trees to expect at a point under each.
 * @customfunction BAFOPTIONS
 * @param basal_area_per_acre Basal area of the stand, in square feet per acre (square meters per hectare when metric).
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns A table: basal area factor, trees at a point, and how that sits with the 4 to 8 that are taught.
 */
export function bafOptions(basal_area_per_acre: any, units?: PlanUnits): any[][] {
  return answered(() => {
    const { areaPerLand, metric } = unitSystem(units);
    const stand = oneNumber(basal_area_per_acre, "Basal area", boundsIn(areaPerLand, 1, 1000));
    const { low, high } = BAND;
    const said = {
      fewer: `Fewer than ${low}: few trees to average`,
      fits: `${low} to ${high} trees: as taught`,
      more: `More than ${high}: many trees to check`,
    };
    const options = optionsFor(stand, metric ? METRIC_GAUGES : IMPERIAL_GAUGES);
    return spilled(
      [`BAF ${areaPerLand.name}`, "Trees per point", "Note"],
      options.map(({ baf, trees, band }) => [baf, trees, said[band]]),
    );
  });
}

/**
 * Points of a square grid over a rectangle, in the order in which they are walked.
 * @customfunction GRIDPOINTS
 * @param width Width of the rectangle from west to east, in feet, meters or any one unit.
 * @param depth Depth of the rectangle from south to north, in the same unit.
 * @param spacing Distance between points and between lines, in the same unit.
 * @param [start_x] First line, east of the west side, in the same unit; pick it by chance. Left out or 0: half the spacing.
 * @param [start_y] First point, north of the south side, in the same unit; pick it by chance. Left out or 0: half the spacing.
 * @returns A table: point, distance east and distance north of the south-west corner.
 */
export function gridPoints(width: any, depth: any, spacing: any, start_x?: any, start_y?: any): any[][] {
  return answered(() => {
    const length = (given: unknown, what: string) => feet(oneNumber(given, what, { unit: "", low: 0.01, high: 1e6 }));
    const between = length(spacing, "Spacing");
    const start = (given: unknown, what: string) =>
      feet(oneNumber(given, what, { unit: "", low: 0, high: between }, between / 2));
    const points = pointsOn(length(width, "Width"), length(depth, "Depth"), between, {
      east: start(start_x, "Start x"),
      north: start(start_y, "Start y"),
    });
    return spilled(
      ["Point", "East", "North"],
      points.map(({ east, north }, at) => [at + 1, east, north]),
    );
  });
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
