import { figure } from "../figures";
import type { MarginAfter } from "../job/marginPath";
import { chartStyle } from "./chartStyle";

export interface MarginChartData {
  readonly path: readonly MarginAfter[];
  /** The margin that is wanted. [%] */
  readonly target: number;
}

/** More than this is cut off, or the first few points would press all others to the ground. [%] */
const TOP = 100;

/** The margin against the number of points, with the margin that is wanted as a dashed line. */
export async function marginChart({ path, target }: MarginChartData, width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  const shown = path.map(({ points, margin }) => ({ points, margin: Math.min(TOP, margin) }));
  const last = shown.slice(-1);
  return Plot.plot({
    width,
    height: 170,
    marginLeft: 44,
    marginBottom: 36,
    marginTop: 24,
    style: chartStyle,
    x: {
      label: "Points",
      labelAnchor: "center",
      labelArrow: "none",
      ticks: Math.min(6, shown.length),
      tickFormat: "d",
    },
    y: { label: "Margin, %", labelArrow: "none", grid: true, ticks: 4, zero: true },
    marks: [
      Plot.ruleY([target], { stroke: "var(--woodlotSeries2)", strokeDasharray: "4 3", strokeWidth: 2 }),
      Plot.line(shown, { x: "points", y: "margin", stroke: "var(--woodlotSeries1)", strokeWidth: 2 }),
      Plot.dot(last, { x: "points", y: "margin", r: 4, fill: "var(--woodlotSeries1)" }),
      Plot.ruleY([0], { stroke: "currentColor" }),
    ],
  });
}

/** The finding of the chart in words. */
export function marginFinding({ path, target }: MarginChartData): string {
  const last = path.at(-1);
  if (!last) return "";
  return `After ${last.points} points the margin is ${figure(last.margin)} %; you can live with ${figure(target)} %`;
}
