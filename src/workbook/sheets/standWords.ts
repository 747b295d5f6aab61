import { beside } from "../address";
import { column } from "../formula";
import { named, plot, PLOTS } from "../tables";
import { hasClusters, hasStrata } from "./designArguments";

/** Cells that hold a total, its margin and its range. */
export interface RangeCells {
  readonly total: string;
  readonly margin: string;
  readonly low: string;
  readonly high: string;
}

const perPlot = column(PLOTS, plot.volume);

/** What the means and margins above go by, where that is not the plain cruise, and which points were left out. */
export function designInWords(): string {
  const outside = `COUNTIF(${column(PLOTS, plot.outside)},"Yes")`;
  return [
    `=IF(${hasStrata},"By strata: each weighs by its acres. ","")`,
    `IF(${hasClusters},"By clusters: the group of plots is the unit of the margins. ","")`,
    `IF(AND(${named.population}<>"",${named.method}="Fixed"),"Margins are for plots out of "&${named.population}&". ","")`,
    `IF(${outside}=0,"",IF(${outside}=1,"1 point outside the tract is left out.",${outside}&" points outside the tract are left out."))`,
  ].join("&");
}

/** The stand in one line: "Basal area 94.3 +/- 14.4 ft2 per acre ...". */
export function inWords(): string {
  const [basalArea, itsMargin, volume, its] = ["B10", "C10", "B12", "C12"];
  const wholeTally = `"Every tree was tallied, so a margin is not applicable. Basal area "&FIXED(${basalArea},1)&" ft2 per acre, volume "&IF(ISNUMBER(${volume}),FIXED(${volume},0)&" bf per acre.","not known.")`;
  const sentence = [
    '"Basal area "',
    `FIXED(${basalArea},1)`,
    '" +/- "',
    `FIXED(${itsMargin},1)`,
    '" ft2 per acre. Volume "',
    `FIXED(${volume},0)`,
    '" +/- "',
    `FIXED(${its},0)`,
    '" bf per acre. "',
    `COUNT(${perPlot})`,
    '" plots, "',
    named.confidence,
    '" pct confident."',
  ].join("&");
  return `=IF(AND(ISNUMBER(${itsMargin}),ISNUMBER(${its})),${sentence},IF(AND(${named.method}="All",ISNUMBER(${basalArea})),${wholeTally},"No margin yet: tally trees on at least 2 plots."))`;
}

/** A margin larger than its figure makes a range that begins below zero, where there is no wood: said in words. */
/** @param summaries where the answers with margins stand */
export function belowZero(summaries: readonly string[]): string {
  const percents = summaries.map((at) => `${beside(at, 1, 3)}:${beside(at, 4, 3)}`).join(",");
  return `=IFERROR(IF(MAX(${percents})>100,"A margin below is larger than its figure. Read its range as from nothing up to High, and tally more plots.",""),"")`;
}

/** Few trees of a species say little of it: how many species that concerns. */
export function speciesBelowZero(speciesAt: string, rows: number): string {
  const [volumes, margins] = [4, 6].map((column) => {
    return `${beside(speciesAt, 1, column)}:${beside(speciesAt, rows, column)}`;
  });
  const count = `SUMPRODUCT(ISNUMBER(${volumes})*ISNUMBER(${margins})*(${margins}>${volumes}))`;
  return `=IFERROR(IF(${count}=0,"","Species whose margin is larger than their volume: "&${count}&". Read their range as from nothing up."),"")`;
}

/** The harvest of the whole tract in one line. @param cells where its total and its range stand */
export function tractInWords({ total, margin, low, high }: RangeCells): string {
  const sentence = `"Harvest of the tract "&FIXED(${total}/1000,0)&" +/- "&FIXED(${margin}/1000,0)&" MBF, range "&IF(${low}<0,"nothing",FIXED(${low}/1000,0))&" to "&FIXED(${high}/1000,0)&"."`;
  const lacking = `IF(${named.acres}="","Give the acres on Setup for the total of the tract.","No total yet: it takes trees with a volume on at least 2 plots.")`;
  const exact = `"Harvest of the tract "&FIXED(${total}/1000,0)&" MBF; every tree was tallied, so a margin is not applicable."`;
  return `=IF(ISNUMBER(${total}),IF(ISNUMBER(${margin}),${sentence},${exact}),${lacking})`;
}
