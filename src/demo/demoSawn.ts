import type { TableRow } from "../workbook/plan";
import { sawn } from "../workbook/tables";

/** Serial number of an invented day, 17 October 2026. */
const DAY = 46_312;

/** Boards from three of the logs: "log species stack", then "thickness x width x length x pieces" and a note. */
const logs: readonly (readonly [log: number, species: string, stack: string, boards: string])[] = [
  [2, "ro", "A", "1x10x12x1, 1x8x12x2, 1x6x12x3, 1x4x12x2 wane on one edge"],
  [4, "yp", "B", "2x12x14x2, 2x10x14x1, 1x12x14x3, 1x8x14x3, 1x6x14x4, 1x4x14x2 wane on one edge"],
  [7, "hi", "A", "1.25x6x8x2, 1x6x8x2, 1x4x8x2"],
];

export const demoSawn: readonly TableRow[] = logs.flatMap(([log, species, stack, boards]) =>
  boards.split(", ").map((text) => {
    const [size = "", ...note] = text.split(" ");
    const [thickness = NaN, width = NaN, length = NaN, pieces = NaN] = size.split("x").map(Number);
    return {
      [sawn.date]: DAY,
      [sawn.log]: log,
      [sawn.species]: species,
      [sawn.thickness]: thickness,
      [sawn.width]: width,
      [sawn.length]: length,
      [sawn.pieces]: pieces,
      [sawn.grade]: note.join(" ") || null,
      [sawn.stack]: stack,
    };
  }),
);
