import { sources as bafOptions } from "../../cruise/bafOptions";
import { sources as checkCruise } from "../../cruise/checkCruise";
import { sources as checkHeight } from "../../cruise/checkHeight";
import { sources as checkTree } from "../../cruise/checkTree";
import { sources as farFromOthers } from "../../cruise/farFromOthers";
import { sources as clusters } from "../../cruise/clusters";
import { sources as countMeasure } from "../../cruise/countMeasure";
import { densityMeasures } from "../../cruise/densities";
import { sources as diameterClass } from "../../cruise/diameterClass";
import { sources as doubleSampling } from "../../cruise/doubleSampling";
import { sources as estimate } from "../../cruise/estimate";
import { sources as gridPoints } from "../../cruise/gridPoints";
import { sources as gridSpacing } from "../../cruise/gridSpacing";
import { sources as importanceValue } from "../../cruise/importanceValue";
import { sources as limitingDistance } from "../../cruise/limitingDistance";
import { samplingMethods } from "../../cruise/methods";
import { sources as loreysHeight } from "../../cruise/loreysHeight";
import { sources as outline } from "../../cruise/outline";
import { sources as plotRadius } from "../../cruise/plotRadius";
import { sources as plotRadiusFactor } from "../../cruise/plotRadiusFactor";
import { plotGuides } from "../../cruise/plotsByAcres";
import { sources as plotsByStratum } from "../../cruise/plotsByStratum";
import { sources as plotSizes } from "../../cruise/plotSizes";
import { sources as plotsNeeded } from "../../cruise/plotsNeeded";
import { sources as quadraticMeanDiameter } from "../../cruise/quadraticMeanDiameter";
import { sources as stoppingRule } from "../../cruise/stoppingRule";
import { sources as stratified } from "../../cruise/stratified";
import { sources as successiveDifferences } from "../../cruise/successiveDifferences";
import { sources as tractTotal } from "../../cruise/tractTotal";
import { plain, sourcesOf, type TopicsOf } from "./topicsOf";

const circle = plain("Geometry", "Area of a circle", "pi d^2 / 576, exact", "computed");
const tolerance = plain(
  "Woodlot Reckoner",
  "Trees too close to call",
  "a tolerance on the taped distance",
  "choice of ours",
);
const methods = sourcesOf(samplingMethods);
const expansion = [...methods, ...plotSizes];
const stand = [...expansion, ...estimate];

/** What the functions for laying out a cruise, and for adding one up, rest on. */
export const cruiseTopics = {
  PLOTSNEEDED: plotsNeeded,
  GRIDSPACING: gridSpacing,
  PLOTRADIUS: plotRadius,
  PLOTRADIUSFACTOR: plotRadiusFactor,
  LIMITINGDISTANCE: limitingDistance,
  INOROUT: [...limitingDistance, tolerance],
  BASALAREA: [circle],
  TREESPERACRE: methods,
  STANDSUMMARY: [...stand, ...quadraticMeanDiameter],
  STANDTABLE: [...expansion, ...diameterClass],
  STOCKTABLE: [...expansion, ...diameterClass],
  SPECIESTABLE: [...stand, ...quadraticMeanDiameter],
  PLOTTABLE: expansion,
  QMD: quadraticMeanDiameter,
  MARGINOFERROR: estimate,
  MARGINPERCENT: estimate,
  MOREPLOTS: [...plotsNeeded, ...estimate, ...stoppingRule],
  TRACTTOTAL: tractTotal,
  CHECKTREES: [...checkTree, ...farFromOthers, ...limitingDistance],
  CHECKPLOTS: checkTree,
  CHECKHEIGHTS: checkHeight,
  PLOTSBYACRES: plotGuides.map(({ source }) => source),
  PLOTSBYSTRATUM: plotsByStratum,
  GRIDPOINTS: gridPoints,
  GRIDINOUTLINE: [...gridPoints, ...outline],
  OUTLINEACRES: outline,
  BAFOPTIONS: bafOptions,
  STRATASUMMARY: [...stratified, ...estimate],
  CLUSTERSUMMARY: clusters,
  COUNTMEASURE: [...countMeasure, ...doubleSampling],
  STANDDENSITY: sourcesOf(densityMeasures),
  CUTSUMMARY: [...expansion, ...quadraticMeanDiameter],
  CUTBYCLASS: [...stand, ...diameterClass],
  CUTBYSPECIES: stand,
  DENSITYSUMMARY: [...expansion, ...sourcesOf(densityMeasures)],
  IMPORTANCEVALUE: importanceValue,
  LOREYSHEIGHT: loreysHeight,
  SYSTEMATICMARGIN: successiveDifferences,
  DOUBLESAMPLE: doubleSampling,
  CHECKCRUISE: checkCruise,
} satisfies TopicsOf;
