import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import { samplingMethods } from "../cruise/methods";
import { cubicFormulas } from "../log/cubic";
import { defectKinds } from "../log/defects";
import { logRules } from "../log/rules";
import { BUYERS_CARD, scaleCardSources as scaleCard } from "../log/scaleCard";
import { boardMeasureSources as boardMeasure } from "../lumber/boardMeasure";
import { hardwood, softwood } from "../lumber/dressedSize";
import { lumberWeightSources as lumberWeight } from "../lumber/lumberWeight";
import { targetThicknessSources as targetThickness } from "../lumber/targetThickness";
import { woodSources as woods } from "../lumber/wood";
import { cautions } from "../reference/cautions";
import { sources as chooseLogs } from "../sawing/wanted/chooseLogs";
import { sawingPatterns } from "../sawing/patterns";
import { sources as resawn } from "../sawing/resawn";
import { sources as solidLog } from "../sawing/sawLog";
import { sources as treeLogs } from "../tree/treeLogs";
import { sources as breakEvenPrice } from "./breakEvenPrice";
import { sources as compareWays } from "./compareWays";
import { sources as homeSawnNet } from "./homeSawnNet";
import { sources as rulePrice } from "./rulePrice";
import { sources as treesForCutList } from "./treesForCutList";
import { sources as treeValue } from "./treeValue";
import { sources as valueRange } from "./valueRange";
import { cruiseTopics } from "./topics/cruiseTopics";
import { logTopics } from "./topics/logTopics";
import { sawingTopics } from "./topics/sawingTopics";
import { plain, sourcesOf, type TopicsOf } from "./topics/topicsOf";
import { treeTopics } from "./topics/treeTopics";

/** Something whose sources can be asked for: a rule, a formula, a pattern, a function of a cell, a caution. */
export interface Topic extends Choice {
  readonly sources: readonly Source[];
}

const ourList = plain(
  "Woodlot Reckoner",
  "Sources, cautions and editions in use",
  "the add-in itself",
  "choice of ours",
);
const rules = sourcesOf(logRules);
const sawing = [...sourcesOf(sawingPatterns), ...solidLog, ...resawn, ...boardMeasure];

/** What functions that stand on several of these, and those about the add-in itself, rest on. */
const otherTopics: TopicsOf = {
  TREEVALUE: treeValue,
  CHECKLIST: [ourList],
  RULEPRICE: [...rulePrice, ...rules, ...scaleCard],
  VALUERANGE: valueRange,
  HOMESAWNET: homeSawnNet,
  BREAKEVENPRICE: breakEvenPrice,
  COMPAREWAYS: compareWays,
  WORKING: [...rules, ...sourcesOf(cubicFormulas), ...boardMeasure, ...targetThickness, ...lumberWeight],
  SOURCEOF: [ourList],
  CAUTIONOF: cautions.map(({ source }) => source),
  BUILDINFO: [ourList],
};

const ofFunctions: TopicsOf = { ...cruiseTopics, ...treeTopics, ...logTopics, ...sawingTopics, ...otherTopics };

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
