import { figure } from "../figures";
import type { DiameterClass } from "../job/readStand";
import { chartStyle } from "./chartStyle";

/** Trees per acre by diameter class: bars from zero. */
export async function diameterChart(classes: readonly DiameterClass[], width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  return Plot.plot({
    width,
    height: 190,
    marginLeft: 44,
    marginBottom: 36,
    marginTop: 24,
    style: chartStyle,
    x: {
      type: "band",
      label: "DBH class, in",
      labelAnchor: "center",
      labelArrow: "none",
      padding: 0.2,
      tickFormat: String,
    },
    y: { label: "Trees per acre", labelArrow: "none", grid: true, ticks: 4, zero: true },
    marks: [
      Plot.barY([...classes], { x: "inches", y: "total", fill: "var(--woodlotSeries1)" }),
      Plot.ruleY([0], { stroke: "currentColor" }),
    ],
  });
}

/** The finding of the chart in words. */
export function diameterFinding(classes: readonly DiameterClass[]): string {
  const all = classes.reduce((sum, { total }) => sum + total, 0);
  const most = classes.reduce(
    (best, one) => (one.total > best.total ? one : best),
    classes[0] ?? { inches: 0, total: 0 },
  );
  return `${figure(all)} trees per acre, most of them in the ${most.inches} in class (${figure(most.total)})`;
}
