import { OutOfRange } from "../../core/basis/problem";
import { grainOf } from "../../core/sawing/grain";
import { sectionAt, type Section } from "../../core/sawing/lyingLog";
import { fannedBy } from "../../core/sawing/quarters/fannedLog";
import type { Outline } from "../../core/sawing/outline";
import type { SawPlan } from "../../core/sawing/sawingPattern";
import { asError } from "./answers";
import { pieceText } from "./cutRows";
import type { UnitSystem } from "./unitSystem";

/** Corners that stand for an ellipse. */
const CORNERS = 48;

/**
 * Outlines of the log's ends and of every board as the log first lay, the pith at 0, 0: closed lines, point by point,
 * with a gap between them that a chart does not draw across.
 */
export function layoutRows(plan: SawPlan, units: UnitSystem): unknown[][] {
  const { lying, log } = plan;
  const at = (share: number) => {
    const fromLargeEnd = log.length * share;
    return ellipse(sectionAt(lying, fromLargeEnd, "top"), fannedBy(lying, fromLargeEnd));
  };
  const isCylinder = lying.isPlain && log.largeEnd === log.smallEnd;
  const ends = [
    { points: at(1), piece: "Small end", grain: "" },
    ...(isCylinder ? [] : [{ points: at(0), piece: "Large end", grain: "" }]),
    ...((log.sweep ?? 0) > 0 ? [{ points: at(1 / 2), piece: "Middle", grain: "" }] : []),
  ];
  const boards = plan.flitches
    .flatMap((flitch) => flitch.boards)
    .map((board, i) => ({
      points: corners(board.outline),
      piece: `${i + 1}: ${pieceText(board, units)}`,
      grain: grainOf(board, lying),
    }));
  const gap = asError(new OutOfRange("A gap between two outlines."));
  return [...ends, ...boards].flatMap(({ points, piece, grain }, i) => [
    ...(i > 0 ? [[gap, gap, "", ""]] : []),
    ...points.map(([x, y]) => [x * units.diameter.perOurs, y * units.diameter.perOurs, piece, grain]),
  ]);
}

type Point = readonly [x: number, y: number];

/** An ellipse, or its four quarters moved outwards, with straight lines between them. */
function ellipse({ u, v, a, b }: Section, { across, up }: ReturnType<typeof fannedBy>): readonly Point[] {
  const inQuarter = CORNERS / 4;
  const quarters = [0, 1, 2, 3].flatMap((quarter) => {
    const [right, high] = [quarter === 0 || quarter === 3 ? across : 0 - across, quarter < 2 ? up : 0 - up];
    // Where the quarters meet, the next one begins.
    return Array.from({ length: across > 0 || up > 0 ? inQuarter + 1 : inQuarter }, (_, i): Point => {
      const angle = (2 * Math.PI * (quarter * inQuarter + i)) / CORNERS;
      return [u + right + a * Math.cos(angle), v + high + b * Math.sin(angle)];
    });
  });
  return [...quarters, quarters[0] as Point];
}

const corners = ({ left, right, lower, upper }: Outline): readonly Point[] => [
  [left, lower],
  [right, lower],
  [right, upper],
  [left, upper],
  [left, lower],
];
