import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import { sources as bafOptions } from "../cruise/bafOptions";
import { sources as checkCruise } from "../cruise/checkCruise";
import { sources as checkHeight } from "../cruise/checkHeight";
import { sources as checkTree } from "../cruise/checkTree";
import { sources as farFromOthers } from "../cruise/farFromOthers";
import { sources as clusters } from "../cruise/clusters";
import { sources as countMeasure } from "../cruise/countMeasure";
import { densityMeasures } from "../cruise/densities";
import { sources as diameterClass } from "../cruise/diameterClass";
import { sources as doubleSampling } from "../cruise/doubleSampling";
import { sources as estimate } from "../cruise/estimate";
import { sources as gridPoints } from "../cruise/gridPoints";
import { sources as gridSpacing } from "../cruise/gridSpacing";
import { sources as importanceValue } from "../cruise/importanceValue";
import { sources as limitingDistance } from "../cruise/limitingDistance";
import { samplingMethods } from "../cruise/methods";
import { sources as loreysHeight } from "../cruise/loreysHeight";
import { sources as outline } from "../cruise/outline";
import { sources as plotRadius } from "../cruise/plotRadius";
import { sources as plotRadiusFactor } from "../cruise/plotRadiusFactor";
import { plotGuides } from "../cruise/plotsByAcres";
import { sources as plotsByStratum } from "../cruise/plotsByStratum";
import { sources as plotSizes } from "../cruise/plotSizes";
import { sources as plotsNeeded } from "../cruise/plotsNeeded";
import { sources as quadraticMeanDiameter } from "../cruise/quadraticMeanDiameter";
import { sources as stoppingRule } from "../cruise/stoppingRule";
import { sources as stratified } from "../cruise/stratified";
import { sources as successiveDifferences } from "../cruise/successiveDifferences";
import { sources as tractTotal } from "../cruise/tractTotal";
import { cordSources } from "../log/cordVolume";
import { cubicFormulas } from "../log/cubic";
import { smalian } from "../log/cubic/smalian";
import { deductionSources as deductions } from "../log/deduction";
import { defectKinds } from "../log/defects";
import { diameterRoundings, twoReadings } from "../log/diameterRounding";
import { logTaperSources as logTaper } from "../log/logTaper";
import { overrunSources as overrun } from "../log/overrun";
import { logRules } from "../log/rules";
import { BUYERS_CARD, scaleCardSources as scaleCard } from "../log/scaleCard";
import { scalingLengthSources as scalingLength } from "../log/scalingLength";
import { segmentsSources as segments } from "../log/segments";
import { boardMeasureSources as boardMeasure } from "../lumber/boardMeasure";
import { driedSizeSources as driedSize } from "../lumber/driedSize";
import { hardwood, lumberKinds, softwood } from "../lumber/dressedSize";
import { equilibriumMoistureSources as equilibriumMoisture } from "../lumber/equilibriumMoisture";
import { kerfRecoverySources as kerfRecovery } from "../lumber/kerfRecovery";
import { lumberWeightSources as lumberWeight } from "../lumber/lumberWeight";
import { surfaceMeasureSources as surfaceMeasure } from "../lumber/surfaceMeasure";
import { tallyMeasures } from "../lumber/tallyMeasure";
import { targetThicknessSources as targetThickness } from "../lumber/targetThickness";
import { woodSources as woods } from "../lumber/wood";
import { cautions } from "../reference/cautions";
import { sources as grain } from "../sawing/grain";
import { sources as headSettings } from "../sawing/headSettings";
import { sources as largestCant } from "../sawing/largestCant";
import { sources as logsForCutList } from "../sawing/logsForCutList";
import { sources as chooseLogs } from "../sawing/wanted/chooseLogs";
import { sources as millLimits } from "../sawing/millLimits";
import { sources as planValue } from "../sawing/planValue";
import { sawingPatterns } from "../sawing/patterns";
import { sources as resawn } from "../sawing/resawn";
import { sources as solidLog } from "../sawing/sawLog";
import { sources as biltmoreMark } from "../tree/biltmoreMark";
import { sources as dbhFromGirth } from "../tree/dbhFromGirth";
import { sources as formClass } from "../tree/formClass";
import { sources as horizontalDistance } from "../tree/horizontalDistance";
import { sources as insideBark } from "../tree/insideBark";
import { localForms } from "../tree/local";
import { sources as fitLocalTable } from "../tree/local/fitLocalTable";
import { sources as localVolume } from "../tree/local/localVolume";
import { sources as logsFromHeight } from "../tree/logsFromHeight";
import { sources as speciesFacts } from "../tree/national/speciesFacts";
import { sources as stemDiameter } from "../tree/national/stemDiameter";
import { sources as stemVolume } from "../tree/national/stemVolume";
import { sources as treeWeight } from "../tree/national/treeWeight";
import { sources as treeHeight } from "../tree/treeHeight";
import { sources as treeLogs } from "../tree/treeLogs";
import { sources as treeVolume } from "../tree/treeVolume";
import { sources as breakEvenPrice } from "./breakEvenPrice";
import { sources as buckHabits } from "./buckHabits";
import { sources as buckPlan } from "./buckPlan";
import { sources as compareWays } from "./compareWays";
import { sources as cutTree } from "./cutTree";
import { sources as homeSawnNet } from "./homeSawnNet";
import { sources as rulePrice } from "./rulePrice";
import { sources as treeLumber } from "./treeLumber";
import { sources as treesForCutList } from "./treesForCutList";
import { sources as treeValue } from "./treeValue";
import { sources as valueRange } from "./valueRange";

/** Something whose sources can be asked for: a rule, a formula, a pattern, a function of a cell, a caution. */
export interface Topic extends Choice {
  readonly sources: readonly Source[];
}

const plain = (author: string, title: string, where: string, standing: Source["standing"]): Source => ({
  author,
  year: "",
  title,
  where,
  standing,
});

const circle = plain("Geometry", "Area of a circle", "pi d^2 / 576, exact", "computed");
const ourList = plain(
  "Woodlot Reckoner",
  "Sources, cautions and editions in use",
  "the add-in itself",
  "choice of ours",
);
const tolerance = plain(
  "Woodlot Reckoner",
  "Trees too close to call",
  "a tolerance on the taped distance",
  "choice of ours",
);

const sourcesOf = (listed: readonly { readonly sources: readonly Source[] }[]) =>
  listed.flatMap(({ sources }) => sources);

const rules = sourcesOf(logRules);
const roundedDiameters = sourcesOf(diameterRoundings);
const methods = sourcesOf(samplingMethods);
const sawing = [...sourcesOf(sawingPatterns), ...solidLog, ...resawn, ...boardMeasure];
const expansion = [...methods, ...plotSizes];
const stand = [...expansion, ...estimate];

/** What each function of a cell rests on. */
const ofFunctions: Readonly<Record<string, readonly Source[]>> = {
  PLOTSNEEDED: plotsNeeded,
  GRIDSPACING: gridSpacing,
  PLOTRADIUS: plotRadius,
  PLOTRADIUSFACTOR: plotRadiusFactor,
  LIMITINGDISTANCE: limitingDistance,
  INOROUT: [...limitingDistance, tolerance],
  TREEHEIGHT: treeHeight,
  HORIZONTALDISTANCE: horizontalDistance,
  DBHFROMGIRTH: dbhFromGirth,
  BILTMOREMARK: biltmoreMark,
  LOGSFROMHEIGHT: logsFromHeight,
  BASALAREA: [circle],
  TREESPERACRE: methods,
  TREEVOLUME: treeVolume,
  TREELOGS: treeLogs,
  TREELUMBER: [...treeLumber, ...treeLogs, ...sawing],
  BUCKPLAN: [...buckPlan, ...stemDiameter, ...treeLogs, ...rules, ...sourcesOf(cubicFormulas)],
  BUCKHABITS: [...buckPlan, ...buckHabits, ...stemDiameter, ...treeLogs, ...rules, ...sourcesOf(cubicFormulas)],
  FORMCLASS: formClass,
  STEMVOLUME: stemVolume,
  LOCALFIT: [...sourcesOf(localForms), ...fitLocalTable],
  LOCALVOLUME: [...sourcesOf(localForms), ...localVolume],
  LOCALTABLE: [...sourcesOf(localForms), ...localVolume],
  STEMDIAMETER: stemDiameter,
  STEMHEIGHT: stemDiameter,
  TREEWEIGHT: treeWeight,
  SPECIESOF: speciesFacts,
  INSIDEBARK: insideBark,
  TREEVALUE: treeValue,
  STANDSUMMARY: [...stand, ...quadraticMeanDiameter],
  STANDTABLE: [...expansion, ...diameterClass],
  STOCKTABLE: [...expansion, ...diameterClass],
  SPECIESTABLE: [...stand, ...quadraticMeanDiameter],
  PLOTTABLE: expansion,
  PRODUCTTABLE: [...cutTree, ...stemDiameter, ...treeLogs, ...treeLumber, ...stand],
  QMD: quadraticMeanDiameter,
  MARGINOFERROR: estimate,
  MARGINPERCENT: estimate,
  MOREPLOTS: [...plotsNeeded, ...estimate, ...stoppingRule],
  TRACTTOTAL: tractTotal,
  CHECKTREES: [...checkTree, ...farFromOthers, ...limitingDistance],
  CHECKPLOTS: checkTree,
  CHECKLIST: [ourList],
  CHECKHEIGHTS: checkHeight,
  CHECKSPECIES: speciesFacts,
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
  LOGSCALE: [...rules, ...segments, ...roundedDiameters, ...logTaper],
  LOGSCALERULES: rules,
  LOGCUBIC: sourcesOf(cubicFormulas),
  SCALINGDIAMETER: [...twoReadings, ...roundedDiameters],
  SCALINGLENGTH: scalingLength,
  DEFECTPERCENT: [...sourcesOf(defectKinds), ...deductions],
  TOTALDEDUCTION: deductions,
  SCALESHEET: [...rules, ...segments, ...scaleCard],
  CARDSCALE: [...scaleCard, ...segments],
  RULEPRICE: [...rulePrice, ...rules, ...scaleCard],
  LOGTAPER: logTaper,
  LOGWEIGHT: smalian.sources,
  CORDVOLUME: cordSources,
  OVERRUN: overrun,
  KERFRECOVERY: kerfRecovery,
  TARGETTHICKNESS: targetThickness,
  SAWPLAN: sawing,
  SAWYIELD: sawing,
  SAWLAYOUT: [...sawing, ...grain],
  SAWWHATIF: sawing,
  SAWVALUE: [...planValue, ...sawing],
  MILLFITS: millLimits,
  LARGESTCANT: largestCant,
  HEADSETTINGS: headSettings,
  LOGSFORCUTLIST: [...logsForCutList, ...sawing],
  BOARDFEET: boardMeasure,
  BOARDTALLY: sourcesOf(tallyMeasures),
  SURFACEMEASURE: surfaceMeasure,
  DRESSEDSIZE: sourcesOf(lumberKinds),
  DRIEDSIZE: [...driedSize, ...woods],
  EQUILIBRIUMMC: equilibriumMoisture,
  LUMBERWEIGHT: [...lumberWeight, ...woods],
  VALUERANGE: valueRange,
  HOMESAWNET: homeSawnNet,
  BREAKEVENPRICE: breakEvenPrice,
  COMPAREWAYS: compareWays,
  WORKING: [...rules, ...sourcesOf(cubicFormulas), ...boardMeasure, ...targetThickness, ...lumberWeight],
  SOURCEOF: [ourList],
  CAUTIONOF: cautions.map(({ source }) => source),
  BUILDINFO: [ourList],
};

/** The same source is often named by several parts of one answer. */
function once(sources: readonly Source[]): readonly Source[] {
  const key = ({ author, title, where }: Source) => [author, title, where].join("|");
  return [...new Map(sources.map((source) => [key(source), source])).values()];
}

/** Everything that can be asked for its sources, gathered from the parts of the core that state them. */
export const topics: readonly Topic[] = [
  ...logRules,
  ...cubicFormulas,
  ...defectKinds,
  ...samplingMethods,
  ...sawingPatterns,
  { title: BUYERS_CARD, sources: scaleCard },
  { title: "Softwood sizes", sources: softwood.sources },
  { title: "Hardwood thicknesses", sources: hardwood.sources },
  { title: "Wood properties", aliases: ["Wood", "Shrinkage"], sources: woods },
  { title: "Cut list", aliases: ["Column generation"], sources: [...chooseLogs, ...sawing] },
  { title: "Trees for a cut list", sources: [...treesForCutList, ...chooseLogs, ...treeLogs] },
  ...Object.entries(ofFunctions).map(([title, sources]) => ({ title, sources })),
  ...cautions.map(({ title, aliases = [], source }) => ({ title, aliases, sources: [source] })),
].map((topic) => ({ ...topic, sources: once(topic.sources) }));
