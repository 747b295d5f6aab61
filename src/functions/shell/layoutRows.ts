import { OutOfRange } from "../../core/basis/problem";
import { grainOf } from "../../core/sawing/grain";
import type { Outline } from "../../core/sawing/outline";
import type { SawPlan } from "../../core/sawing/sawingPattern";
import { asError } from "./answers";
import { pieceText } from "./cutRows";
import type { UnitSystem } from "./unitSystem";

/** Corners that stand for a circle. */
const CORNERS = 48;

/**
 * Outlines of the log's ends and of every board as the log first lay, the pith at 0, 0: closed lines, point by point,
 * with a gap between them that a chart does not draw across.
 */
export function layoutRows(plan: SawPlan, units: UnitSystem): unknown[][] {
  const { smallEnd, largeEnd } = plan.log;
  const ends = [
    { points: circle(smallEnd), piece: "Small end", grain: "" },
    ...(largeEnd > smallEnd ? [{ points: circle(largeEnd), piece: "Large end", grain: "" }] : []),
  ];
  const boards = plan.flitches
    .flatMap((flitch) => flitch.boards)
    .map((board, i) => ({
      points: corners(board.outline),
      piece: `${i + 1}: ${pieceText(board, units)}`,
      grain: grainOf(board.outline),
    }));
  const gap = asError(new OutOfRange("A gap between two outlines."));
  return [...ends, ...boards].flatMap(({ points, piece, grain }, i) => [
    ...(i > 0 ? [[gap, gap, "", ""]] : []),
    ...points.map(([x, y]) => [x * units.diameter.perOurs, y * units.diameter.perOurs, piece, grain]),
  ]);
}

type Point = readonly [x: number, y: number];

function circle(diameter: number): readonly Point[] {
  return Array.from({ length: CORNERS + 1 }, (_, i): Point => {
    const angle = (2 * Math.PI * (i % CORNERS)) / CORNERS;
    return [(diameter / 2) * Math.cos(angle), (diameter / 2) * Math.sin(angle)];
  });
}

const corners = ({ left, right, lower, upper }: Outline): readonly Point[] => [
  [left, lower],
  [right, lower],
  [right, upper],
  [left, upper],
  [left, lower],
];
