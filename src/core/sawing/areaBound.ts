import type { Source } from "../basis/source";
import { boardFeet, dollars, type BoardFeet, type Dollars } from "../basis/units";
import { sawnBoardFeet } from "./boardSize";
import type { Flitch } from "./flitches";
import { acrossLargeEnd, acrossSmallEnd, type SawLog } from "./sawLog";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Most that a log can give by the area of its sections and the kerf",
    where: "core/sawing/areaBound; held against every plan of the random logs in test/core/sawing",
    standing: "computed",
  },
];

/** The most that any plan could give. */
export interface Ceiling {
  readonly boardFeet: BoardFeet;
  /** Left out when the boards have no prices. */
  readonly value?: Dollars;
}

export interface CeilingOrder {
  readonly log: SawLog;
  /** Whatever the log can be sawn into. */
  readonly groups: readonly (readonly Flitch[])[];
  readonly priced: boolean;
  /** Of the head saw. [in] */
  readonly kerf: number;
  /** Share of a board's thickness over which wane may show, 0 to 1. */
  readonly wane: number;
}

/**
 * The most that any plan could give by area and kerf, whatever its pattern, its settings and the mill.
 *
 * Flitches lie a kerf apart across their thickness, so each may be thickened by half a kerf on both faces without
 * meeting another, and then lies in a section that is half a kerf larger all around. At a distance l from the large end,
 *
 *     sum over flitches that reach l of w (t (1 - q) + k) <= C(l) = pi A B + P k / 2 + pi k^2 / 4
 *
 *     A, B, P  half the diameters of the section at l, and the girth of its bark, pi sqrt(2 (A^2 + B^2)) at the most  [in]
 *     q        share of the thickness over which wane may show;  k  kerf [in]
 *
 * So a plan is worth no more than
 *
 *     sum over lengths l of (C(l) - C(next longer l)) max over flitches no longer than l of W / (w (t (1 - q) + k))
 *
 * since the ring between two such sections holds shorter flitches only, W the worth of one.
 */
export function mostByAreaAndKerf(order: CeilingOrder): Ceiling {
  const most = (worthOf: (flitch: Flitch) => number) => bound(order, worthOf);
  return {
    boardFeet: boardFeet(most(({ boards }) => boards.reduce((sum, piece) => sum + sawnBoardFeet(piece), 0))),
    ...(order.priced && { value: dollars(most(({ worth }) => worth)) }),
  };
}

function bound({ log, groups, kerf, wane }: CeilingOrder, worthOf: (flitch: Flitch) => number): number {
  const richest = new Map<number, number>();
  for (const flitch of groups.flat()) {
    const { listed, width, length } = flitch;
    const perArea = worthOf(flitch) / (width * (listed * (1 - wane) + kerf));
    richest.set(length, Math.max(richest.get(length) ?? 0, perArea));
  }
  let sum = 0;
  let best = 0;
  const lengths = [...richest.keys()].sort((a, b) => a - b);
  lengths.forEach((length, i) => {
    best = Math.max(best, richest.get(length) as number);
    const longer = lengths[i + 1];
    sum += best * (grownSection(log, length, kerf) - (longer === undefined ? 0 : grownSection(log, longer, kerf)));
  });
  return sum;
}

/** C(l). [in2] */
function grownSection(log: SawLog, fromLargeEnd: number, kerf: number): number {
  const half = (large: number, small: number) => (large - ((large - small) * fromLargeEnd) / log.length) / 2;
  const [a, b] = [half(log.largeEnd, log.smallEnd), half(acrossLargeEnd(log), acrossSmallEnd(log))];
  const girth = Math.PI * Math.sqrt(2 * (a ** 2 + b ** 2));
  return Math.PI * a * b + (girth * kerf) / 2 + (Math.PI * kerf ** 2) / 4;
}
