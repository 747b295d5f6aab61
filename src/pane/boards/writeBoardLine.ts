import type { BoardLine } from "./boardLine";

/** Boards as the line one would type for them, so that it can be put back into the box. */
export const writeBoardLine = ({ thickness, width, length, pieces, note }: BoardLine): string =>
  [String(thickness), String(width), String(length), pieces === 1 ? "" : `x${pieces}`, note === "" ? "" : `/${note}`]
    .filter((part) => part !== "")
    .join(" ");

/** Boards in words, as they will be saved: "4 boards 1.25 x 6 in, 12 ft". */
export const sayBoard = ({ thickness, width, length, pieces, note }: BoardLine): string =>
  [
    `${pieces === 1 ? "1 board" : `${pieces} boards`} ${thickness} x ${width} in`,
    `${length} ft`,
    note === "" ? "" : `note: ${note}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
