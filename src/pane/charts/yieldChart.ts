import { figure } from "../figures";
import type { AllLogsFigures } from "../solver/allLogsFigures";
import { chartStyle } from "./chartStyle";

export const PARTS = [
  ["Boards", 2],
  ["Sawdust", 5],
  ["Slabs", 7],
] as const;

/** The wood of the logs stacked by what becomes of it, and below it the scale of each rule, all in board feet. */
export async function yieldChart({ boards, sawdust, slabs, rules }: AllLogsFigures, width: number): Promise<Element> {
  const Plot = await import("./plotParts");
  const amounts = [boards, sawdust, slabs];
  const wood = PARTS.map(([what, series], i) => ({
    row: "All the wood",
    what,
    fill: `var(--woodlotSeries${series})`,
    bf: amounts[i] ?? 0,
  }));
  const scales = rules.map(({ title, scale }) => ({ row: title, fill: "var(--woodlotSeries1)", bf: scale }));
  let from = 0;
  const stacked = wood.map((one) => {
    const x1 = from;
    from += one.bf;
    return { ...one, x1, x2: from };
  });
  return Plot.plot({
    width,
    height: 40 + 26 * (1 + scales.length),
    marginLeft: 162,
    marginBottom: 34,
    marginTop: 6,
    style: chartStyle,
    x: { label: "Board feet", labelAnchor: "center", labelArrow: "none", grid: true, ticks: 4 },
    y: { label: null, domain: ["All the wood", ...rules.map(({ title }) => title)] },
    marks: [
      Plot.barX(stacked, { x1: "x1", x2: "x2", y: "row", fill: "fill", stroke: "var(--woodlotGround)" }),
      Plot.barX(scales, { x1: () => 0, x2: "bf", y: "row", fill: "fill" }),
      Plot.ruleX([0, boards], { stroke: "currentColor", strokeDasharray: "3 3" }),
    ],
  });
}

/** The finding of the chart in words. */
export function yieldFinding({ boards, wood, rules, buyers }: AllLogsFigures): string {
  const share = wood > 0 ? (100 * boards) / wood : 0;
  const own = rules.find(({ title }) => title === buyers) ?? rules[0];
  const over = own && own.scale > 0 ? `, ${overrunIn(own.overrun)} the scale by ${own.title}` : "";
  return `${figure(boards)} bf of boards, ${figure(share)} % of the wood${over}`;
}

const overrunIn = (percent: number) => (percent >= 0 ? `${figure(percent)} % over` : `${figure(-percent)} % under`);
