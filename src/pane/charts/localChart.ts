import { short } from "../figures";
import type { LocalUnits, MeasuredTree } from "../job/readLocalVolume";
import type { LocalCurve } from "../local/localCurves";
import { chartStyle } from "./chartStyle";

export interface LocalChartData {
  readonly felled: readonly MeasuredTree[];
  readonly curves: readonly LocalCurve[];
  readonly units: LocalUnits;
}

/** The middle of the curves is drawn through, the shortest and the tallest trees dashed. */
const DASHES = ["2 3", "none", "6 3"] as const;

/** Felled trees as dots, and the fitted equation as a line for each of a few heights. */
export async function localChart({ felled, curves, units }: LocalChartData, width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  return Plot.plot({
    width,
    height: 240,
    marginLeft: 48,
    marginBottom: 36,
    marginTop: 24,
    style: chartStyle,
    x: { label: `DBH, ${units.diameter}`, labelAnchor: "center", labelArrow: "none", ticks: 6 },
    y: { label: `Wood, ${units.volume}`, labelArrow: "none", grid: true, ticks: 5, zero: true },
    marks: [
      ...curves.map(({ points }, place) =>
        Plot.line([...points], {
          x: "dbh",
          y: "volume",
          stroke: "var(--woodlotSeries1)",
          strokeWidth: 2,
          strokeDasharray: (curves.length > 1 ? DASHES[place] : undefined) ?? "none",
        }),
      ),
      Plot.dot([...felled], {
        x: "dbh",
        y: "volume",
        r: 4,
        fill: "var(--woodlotSeries2)",
        stroke: "var(--woodlotGround)",
      }),
      Plot.ruleY([0], { stroke: "currentColor" }),
    ],
  });
}

/** What the lines of the chart stand for. */
export function sayCurves(curves: readonly LocalCurve[], { distance }: LocalUnits): string {
  const [low, middle, high] = curves.map(({ height }) => `${short(Math.round(height * 10) / 10)} ${distance}`);
  if (!middle) return `Dots: felled trees. Line: the equation at ${low}.`;
  if (!high) return `Dots: felled trees. Lines: the equation at ${low} and ${middle}.`;
  return `Dots: felled trees. Lines: the equation for the shortest of them (${low}, dotted), their mean height (${middle}) and the tallest (${high}, dashed).`;
}
