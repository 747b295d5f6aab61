import { Problem } from "../../core/basis/problem";
import { feet, inches } from "../../core/basis/units";
import { grossScale } from "../../core/log/grossScale";
import type { LogRule } from "../../core/log/logRule";
import { allRules } from "../../core/log/ruleSelections";
import { RULE_DIAMETERS } from "../../workbook/sheets/rules";

/** Board feet by one rule at every diameter; null where the rule has no value. */
export interface RuleLine {
  readonly id: string;
  readonly title: string;
  /** Its place in the list of all rules, which its looks go by. */
  readonly place: number;
  readonly volumes: readonly (number | null)[];
}

export const diameters = RULE_DIAMETERS;

/** What the rules give for logs of one length, rounded as their printed tables are. */
export const rulesByDiameter = (length: number, shown: readonly string[]): readonly RuleLine[] =>
  allRules.rules.flatMap((rule, place) =>
    shown.includes(rule.id)
      ? [
          {
            id: rule.id,
            title: rule.title,
            place,
            volumes: diameters.map((diameter) => volumeOrNone(rule, diameter, length)),
          },
        ]
      : [],
  );

function volumeOrNone(rule: LogRule, diameter: number, length: number): number | null {
  try {
    return grossScale(rule, { diameter: inches(diameter), length: feet(length) });
  } catch (problem) {
    if (problem instanceof Problem) return null;
    throw problem;
  }
}

/** The diameter at which the rules part most, by how much, and which is least and most there. */
export function widestGap(lines: readonly RuleLine[]) {
  const gaps = diameters.flatMap((diameter, i) => {
    const known = lines.flatMap(({ title, volumes }) => {
      const volume = volumes[i];
      return typeof volume === "number" && volume > 0 ? [{ title, volume }] : [];
    });
    if (known.length < 2) return [];
    const [least, most] = [
      known.reduce((low, one) => (one.volume < low.volume ? one : low)),
      known.reduce((high, one) => (one.volume > high.volume ? one : high)),
    ];
    return [{ diameter, least, most, times: most.volume / least.volume }];
  });
  return gaps.length === 0 ? undefined : gaps.reduce((widest, one) => (one.times > widest.times ? one : widest));
}
