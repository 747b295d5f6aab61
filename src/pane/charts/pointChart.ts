import { figure, roundedTo } from "../figures";
import type { Estimated, PointFigures } from "../job/readStand";
import { chartStyle } from "./chartStyle";

export interface PointChartData {
  readonly points: readonly PointFigures[];
  readonly mean: Estimated;
}

/** Basal area of every point in the order of the list, with the mean and its range; empty points are hollow. */
export async function pointChart({ points, mean }: PointChartData, width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  const dots = points.map((point, place) => ({ ...point, place: place + 1 }));
  const range = mean.low !== null && mean.high !== null ? [{ low: mean.low, high: mean.high }] : [];
  return Plot.plot({
    width,
    height: 190,
    marginLeft: 44,
    marginBottom: 36,
    marginTop: 24,
    style: chartStyle,
    x: {
      label: "Point",
      labelAnchor: "center",
      labelArrow: "none",
      domain: [0.5, dots.length + 0.5],
      ticks: dots.map(({ place }) => place).filter((place) => place % Math.ceil(dots.length / 8) === 0),
      tickFormat: (place: number) => dots[place - 1]?.plot ?? "",
    },
    y: { label: "Basal area, ft² per acre", labelArrow: "none", grid: true, ticks: 4, zero: true },
    marks: [
      Plot.ruleY(range, { y: "low", stroke: "var(--woodlotSeries1)", strokeDasharray: "4 3" }),
      Plot.ruleY(range, { y: "high", stroke: "var(--woodlotSeries1)", strokeDasharray: "4 3" }),
      Plot.ruleY([mean.value], { stroke: "var(--woodlotSeries1)", strokeWidth: 2 }),
      Plot.dot(dots, {
        x: "place",
        y: "basalArea",
        r: 4,
        stroke: "var(--woodlotSeries2)",
        fill: (dot: PointFigures) => (dot.trees === 0 ? "var(--woodlotGround)" : "var(--woodlotSeries2)"),
      }),
      Plot.ruleY([0], { stroke: "currentColor" }),
    ],
  });
}

/** The finding of the chart in words. */
export function pointFinding({ points, mean }: PointChartData): string {
  const show = roundedTo(mean.margin);
  const empty = points.filter(({ trees }) => trees === 0).length;
  return `${figure(points.length)} points${empty > 0 ? `, ${empty} of them empty` : ""}: mean ${show(mean.value)} ft² per acre${
    mean.margin === null ? "" : ` ± ${show(mean.margin)}`
  }`;
}
