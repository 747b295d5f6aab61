import type { BoardLine } from "./boardLine";

/** Measures that a board seldom has; choices of ours. */
const THICK = 6; // in
const WIDE = 24; // in
const LONG = 24; // ft

/** What looks odd in a line of boards before it is saved; "" when nothing does. */
export function boardDoubt({ thickness, width, length }: BoardLine): string {
  if (thickness > width) return "Thicker than it is wide. Thickness and width swapped?";
  if (thickness > THICK) return `Thickness ${thickness} in is very thick for a board.`;
  if (thickness < 0.25) return `Thickness ${thickness} in is very thin. Type 1.25 or 5/4 for five quarters.`;
  if (width > WIDE) return `Width ${width} in is very wide for a board.`;
  if (length > LONG) return `Length ${length} ft is very long for a board. Is it in inches?`;
  return "";
}
