import { render, svg } from "lit";
import { figure } from "../figures";
import type { CutPart } from "../job/readCut";
import { chartStyle } from "./chartStyle";

const HATCHED = "woodlot-cut";

/**
 * Trees per acre by diameter class: what stays as full bars from zero, what is cut hatched upon them, and the margin of
 * all trees of the class as a line.
 */
export async function cutChart(classes: readonly CutPart[], width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  const stays = "var(--woodlotSeries1)";
  const bars = classes.map((one) => ({ ...one, top: one.leave + one.cut }));
  const ranges = classes.flatMap(({ name, before, beforeMargin }) =>
    beforeMargin === null ? [] : [{ name, low: Math.max(0, before - beforeMargin), high: before + beforeMargin }],
  );
  const drawing = Plot.plot({
    width,
    height: 210,
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
      domain: classes.map(({ name }) => name),
    },
    y: { label: "Trees per acre", labelArrow: "none", grid: true, ticks: 4, zero: true },
    marks: [
      Plot.barY(bars, { x: "name", y1: 0, y2: "leave", fill: stays }),
      Plot.barY(bars, { x: "name", y1: "leave", y2: "top", fill: `url(#${HATCHED})`, stroke: stays }),
      Plot.ruleX(ranges, { x: "name", y1: "low", y2: "high", stroke: "currentColor", strokeWidth: 1.5 }),
      Plot.ruleY([0], { stroke: "currentColor" }),
    ],
  });
  drawing.prepend(hatching(stays));
  return drawing;
}

/** The pattern that bars are filled with by its id. */
function hatching(color: string): SVGDefsElement {
  const definitions = document.createElementNS("http://www.w3.org/2000/svg", "defs");
  render(
    svg`<pattern id=${HATCHED} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line x1="0" y1="0" x2="0" y2="6" stroke=${color} stroke-width="2"></line>
    </pattern>`,
    definitions,
  );
  return definitions;
}

/** The finding of the chart in words. */
export function cutFinding(classes: readonly CutPart[]): string {
  const sum = (of: (part: CutPart) => number) => classes.reduce((all, one) => all + of(one), 0);
  const [before, cut] = [sum((one) => one.before), sum((one) => one.cut)];
  const most = classes.reduce<CutPart | undefined>((best, one) => (one.cut > (best?.cut ?? 0) ? one : best), undefined);
  const from = most ? `, most of them from the ${most.name} in class (${figure(most.cut, 1)})` : "";
  return `${figure(cut, 1)} of ${figure(before, 1)} trees per acre are cut${from}`;
}
