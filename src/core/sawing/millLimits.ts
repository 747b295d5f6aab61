import type { Choice } from "../basis/choices";
import { shown } from "../basis/require";
import type { Source } from "../basis/source";
import { thickestOf, type SawLog } from "./sawLog";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "A log held against the owner's own limits",
    where: "core/sawing/millLimits",
    standing: "choice of ours",
  },
];

/** Something that binds the plan; its number is in inches for a diameter, in feet for a distance. */
export interface MillLimit extends Choice {
  readonly id: MillLimitId;
  readonly measure: "diameter" | "distance" | "percent";
  /** How far a log oversteps the limit; 0 or less when it fits. Left out when the log itself is not concerned. */
  readonly overstep?: (log: SawLog, limit: number) => number;
  readonly sentence?: (amount: string) => string;
}

export type MillLimitId =
  | "largestDiameter"
  | "longestLog"
  | "shortestLog"
  | "bladeAboveBed"
  | "shortestBoard"
  | "widestCut"
  | "throat"
  | "edgerKerf"
  | "lengthStep"
  | "scaleStep"
  | "waneAllowed";

/** The limits that were given; one left out does not bind. */
export type Mill = Readonly<Partial<Record<MillLimitId, number>>>;

export const millLimits: readonly MillLimit[] = [
  {
    id: "largestDiameter",
    title: "Largest diameter",
    aliases: ["Largest log diameter", "Largest log"],
    measure: "diameter",
    overstep: (log, limit) => thickestOf(log) - limit,
    sentence: (amount) => `Too thick by ${amount}`,
  },
  {
    id: "longestLog",
    title: "Longest log",
    measure: "distance",
    overstep: ({ length }, limit) => length - limit,
    sentence: (amount) => `Too long by ${amount}`,
  },
  {
    id: "shortestLog",
    title: "Shortest log",
    measure: "distance",
    overstep: ({ length }, limit) => limit - length,
    sentence: (amount) => `Too short by ${amount}`,
  },
  {
    id: "bladeAboveBed",
    title: "Blade above bed",
    aliases: ["Least blade height", "Lowest blade height"],
    measure: "diameter",
  },
  { id: "shortestBoard", title: "Shortest board", measure: "distance" },
  {
    id: "lengthStep",
    title: "Length step",
    aliases: ["Step of lengths"],
    measure: "distance",
  },
  {
    id: "widestCut",
    title: "Widest cut",
    aliases: ["Width of cut"],
    measure: "diameter",
  },
  {
    id: "throat",
    title: "Throat",
    aliases: ["Depth above blade", "Depth of cut"],
    measure: "diameter",
  },
  { id: "edgerKerf", title: "Edger kerf", measure: "diameter" },
  {
    id: "scaleStep",
    title: "Scale step",
    aliases: ["Step of the scale", "Mark of the scale"],
    measure: "diameter",
  },
  {
    id: "waneAllowed",
    title: "Wane allowed",
    aliases: ["Wane allowed percent of thickness"],
    measure: "percent",
  },
];

/** Writes a length in the user's unit: "2 ft", "0.6 m". */
export type SayAmount = (amount: number, measure: MillLimit["measure"]) => string;

/**
 * Why a log does not fit a mill, such as "Too long by 2 ft"; undefined when it fits.
 * Every limit that is overstepped is named.
 */
export function whyItDoesNotFit(log: SawLog, mill: Mill, say: SayAmount = imperial): string | undefined {
  const reasons = millLimits.flatMap(({ id, measure, overstep, sentence }) => {
    const limit = mill[id];
    const excess = limit === undefined ? 0 : (overstep?.(log, limit) ?? 0);
    return excess > 1e-9 && sentence ? [sentence(say(excess, measure))] : [];
  });
  return reasons.length === 0 ? undefined : reasons.join("; ");
}

const imperialUnits = { diameter: "in", distance: "ft", percent: "%" };
const imperial: SayAmount = (amount, measure) => `${shown(amount)} ${imperialUnits[measure]}`;
