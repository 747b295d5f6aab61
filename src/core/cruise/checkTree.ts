import { shown } from "../basis/require";
import type { Source } from "../basis/source";
import type { Inches } from "../basis/units";
import { didYouMean } from "../basis/nameMatch";
import { inOurUnits, told, type Telling } from "../basis/telling";
import { likeCodes } from "./likeCodes";
import type { NameList } from "./nameList";

/** One line of a tally as it was written down; what is blank is undefined. */
export interface TallyLine {
  readonly plot: string | undefined;
  readonly species: string | undefined;
  readonly dbh: number | undefined;
  readonly logs: number | undefined;
}

/** What a tally is checked against. */
export interface TallyRules {
  readonly plots: NameList;
  readonly species: NameList;
  readonly leastDbh: Inches;
  readonly mostDbh: Inches;
  /** How sentences tell measures; left out, in inches and feet. */
  readonly telling?: Telling;
  /** False where no line of the tally has logs: then a line without them is no slip. */
  readonly logsMeasured: boolean;
}

export const sources: readonly Source[] = [
  {
    author: "C. Mesavage and J. W. Girard",
    year: "1946",
    title: "Tables for Estimating Board-Foot Volume of Timber, form class 78",
    where:
      "the most logs that the tables carry for a diameter, as reprinted in the Service Forester's Handbook and by the University of Florida",
    standing: "read",
  },
  {
    author: "University of Georgia",
    year: "n.d.",
    title: "teaching page on forest survey terms, title not noted",
    where: "hardwood sawtimber begins at 11.0 in",
    url: "https://warnell.forestry.uga.edu/warnell/service/library/for98-001/node3.html",
    standing: "read",
  },
];

const SAWTIMBER = 11; // in, hardwoods; below it a tree without logs is nothing odd [2]

/** More logs than any tree has, so that the height was written in feet; a choice of ours. */
const LIKE_FEET = 8;
const LOG = 16; // ft

/** Most 16-foot logs that printed tables carry, from a diameter on. [1] The last line is a choice of ours. */
const MOST_LOGS = [
  { from: 20, logs: 5 },
  { from: 12, logs: 4 },
  { from: 10, logs: 3 },
  { from: 0, logs: 2 },
] as const;

/**
 * The first thing that looks wrong with a line of the tally, in one plain sentence; "" when nothing does.
 * It only asks for a second look: a tree may be odd and right.
 *
 * [1] C. Mesavage and J. W. Girard, "Tables for Estimating Board-Foot Volume of Timber", 1946
 * [2] University of Georgia, teaching page on forest survey terms: hardwood sawtimber 11.0 in and up
 */
export function checkTree(line: TallyLine, rules: TallyRules): string {
  const { species, dbh, logs } = line;
  if (species === undefined && dbh === undefined && logs === undefined) return "";
  return checkDbh(line, rules) || checkPlot(line, rules) || checkSpecies(line, rules) || checkLogs(line, rules);
}

/** A diameter as the user reads it: "14.3 in", "36.3 cm". */
const diameterIn =
  ({ telling = inOurUnits }: TallyRules) =>
  (value: number) =>
    told(telling, value, "in");

function checkDbh({ dbh }: TallyLine, rules: TallyRules): string {
  const { leastDbh, mostDbh } = rules;
  const diameter = diameterIn(rules);
  if (dbh === undefined) return "DBH is missing, so this tree is not counted.";
  if (dbh < leastDbh) return `DBH ${diameter(dbh)} is under your ${diameter(leastDbh)} limit.`;
  if (dbh <= mostDbh) return "";
  const tenTimes = dbh / 10 >= leastDbh && dbh / 10 <= mostDbh;
  return `DBH ${diameter(dbh)} is over your ${diameter(mostDbh)} limit.${tenTimes ? " Missing a decimal point?" : ""}`;
}

function checkPlot({ plot }: TallyLine, { plots }: TallyRules): string {
  if (plot === undefined) return "The plot is missing, so this tree is not counted.";
  return plots.placeOf(plot) === undefined ? `Plot ${plot} is not in the plot list.` : "";
}

function checkSpecies({ species }: TallyLine, rules: TallyRules): string {
  if (species === undefined) return "The species is missing.";
  if (rules.species.placeOf(species) !== undefined) return "";
  const meant = likeCodes(species, rules.species.names);
  const ask = meant.length === 0 ? "" : ` ${didYouMean(meant)}`;
  return `"${species}" is not in your species list. Fix the code or add it on Setup.${ask}`;
}

function checkLogs({ dbh, logs }: TallyLine, rules: TallyRules): string {
  if (dbh === undefined) return "";
  const diameter = diameterIn(rules);
  if (logs === undefined) {
    if (!rules.logsMeasured || dbh < SAWTIMBER) return "";
    return `Logs are missing for a tree of ${diameter(dbh)}, so it adds no volume.`;
  }
  if (logs < 0) return `Logs should be 0 or more. You have ${shown(logs)}.`;
  if (logs >= LIKE_FEET) {
    return `${shown(logs)} logs look like feet: ${shown(logs)} ft make ${shown(Math.round((2 * logs) / LOG) / 2)} logs.`;
  }
  const most = MOST_LOGS.find(({ from }) => dbh >= from)?.logs ?? 0;
  if (logs > most)
    return `${shown(logs)} logs look like too many for ${diameter(dbh)}; printed tables stop at ${most}.`;
  return Number.isInteger(2 * logs) ? "" : `Logs should go in half steps, such as 2 or 2.5. You have ${shown(logs)}.`;
}
