import type { BoardSize } from "../../src/core/sawing/boardSize";
import { placesIn, ROUNDING } from "./liveSawingProgram";

export interface SmallCutList {
  /** Diameters of logs without taper, all as long as the pieces. [in] */
  readonly diameters: readonly number[];
  readonly pieces: readonly BoardSize[];
  readonly counts: readonly number[];
  readonly kerf: number;
  /** A piece that can be cut down to so many of another one. */
  readonly cuts: readonly { readonly from: number; readonly to: number; readonly gives: number }[];
  /** What a log costs that is sawn, and a piece that is missing. */
  readonly logCost: (diameter: number) => number;
  readonly missingCost: (piece: number) => number;
}

/**
 * The whole choice as one integer programme in LP text, for a general solver: a 0-1 variable for each log, one for every
 * piece at every place in every log, and the pieces that are missing. Live sawing, one piece from each flitch; nothing
 * of column generation and nothing of the sawing programme is in it.
 */
export function cutListProgram({ diameters, pieces, counts, kerf, cuts, logCost, missingCost }: SmallCutList): string {
  const boards = diameters.flatMap((diameter, log) =>
    placesIn(diameter, pieces, kerf).flatMap((lower) =>
      pieces.flatMap(({ thickness, width }, piece) => {
        const end = lower + thickness;
        const outer = Math.max(Math.abs(lower), Math.abs(end));
        const fits = outer < diameter / 2 && 2 * Math.sqrt((diameter / 2) ** 2 - outer ** 2) + ROUNDING >= width;
        return fits ? [{ log, piece, lower, end: end + kerf }] : [];
      }),
    ),
  );
  const named = boards.map((board, i) => ({ ...board, name: `x${i}` }));
  const rows = diameters.flatMap((_, log) => {
    const own = named.filter((board) => board.log === log);
    return [...new Set(own.map(({ lower }) => lower))].map((place) => {
      const here = own.filter(({ lower, end }) => lower <= place && place < end - ROUNDING);
      return `${here.map(({ name }) => name).join(" + ")} - u${log} <= 0`;
    });
  });
  const lists = pieces.map((_, piece) => {
    const own = named.filter((board) => board.piece === piece);
    const gained = cuts.flatMap(({ to, gives }, i) => (to === piece ? [`${gives} c${i}`] : []));
    const lost = cuts.flatMap(({ from }, i) => (from === piece ? [` - c${i}`] : []));
    return `${[...own.map(({ name }) => name), ...gained, `m${piece}`].join(" + ")}${lost.join("")} >= ${counts[piece]}`;
  });
  const costs = [
    ...diameters.map((diameter, log) => `${logCost(diameter)} u${log}`),
    ...pieces.map((_, piece) => `${missingCost(piece)} m${piece}`),
  ];
  return [
    "Minimize",
    ` cost: ${costs.join(" + ")}`,
    "Subject To",
    ...[...rows, ...lists].map((row, i) => ` r${i}: ${row}`),
    "Bounds",
    ...pieces.map((_, piece) => ` 0 <= m${piece} <= ${counts[piece]}`),
    "Generals",
    ` ${[...pieces.map((_, piece) => `m${piece}`), ...cuts.map((_, i) => `c${i}`)].join(" ")}`,
    "Binary",
    ` ${[...diameters.map((_, log) => `u${log}`), ...named.map(({ name }) => name)].join(" ")}`,
    "End",
  ].join("\n");
}
