import { figure } from "../figures";
import { diameters, widestGap, type RuleLine } from "../rules/rulesByDiameter";
import { chartStyle } from "./chartStyle";

export interface RuleChartData {
  readonly lines: readonly RuleLine[];
  /** [ft] */
  readonly length: number;
}

const SERIES = 7;
const DASHES = ["none", "6 3", "2 3"] as const;

/** Colour and dash of a rule: the seven colours once in each dash, so that no two rules look alike. */
export const looksOf = (place: number) => ({
  stroke: `var(--woodlotSeries${(place % SERIES) + 1})`,
  dash: DASHES[Math.floor(place / SERIES) % DASHES.length] ?? "none",
});

/** Board feet against diameter, a line for each rule. */
export async function ruleChart({ lines }: RuleChartData, width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  return Plot.plot({
    width,
    height: 240,
    marginLeft: 48,
    marginBottom: 36,
    marginTop: 24,
    style: chartStyle,
    x: { label: "Diameter inside bark, in", labelAnchor: "center", labelArrow: "none", ticks: 6 },
    y: { label: "Board feet", labelArrow: "none", grid: true, ticks: 5, zero: true },
    marks: [
      ...lines.map(({ place, volumes }) => {
        const { stroke, dash } = looksOf(place);
        const points = diameters.flatMap((diameter, i) => {
          const volume = volumes[i];
          return typeof volume === "number" ? [{ diameter, volume }] : [];
        });
        return Plot.line(points, { x: "diameter", y: "volume", stroke, strokeWidth: 2, strokeDasharray: dash });
      }),
      Plot.ruleY([0], { stroke: "currentColor" }),
    ],
  });
}

/** The finding of the chart in words. */
export function ruleFinding({ lines, length }: RuleChartData): string {
  const gap = widestGap(lines);
  if (!gap) return `Board feet in a log of ${length} ft, by diameter`;
  const { diameter, least, most, times } = gap;
  return `At ${diameter} in by ${length} ft the rules part most: ${figure(least.volume)} bf by ${least.title}, ${figure(most.volume)} by ${most.title}, ${figure(100 * (times - 1))} % more`;
}
