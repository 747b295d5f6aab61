import type { BoardSize } from "../../src/core/sawing/boardSize";
import { worthAcross } from "./sawingByEnumeration";

/**
 * Live sawing of a cylinder as an integer programme in LP text, for a general solver: one 0-1 variable for every board
 * at every place it can need, worth what its flitch is edged to; no place in the log may be taken twice.
 *
 * Places are the reach of every listed width below the pith, and those raised by every sum of thicknesses and kerfs:
 * any stack can be slid down to such places. Without a flitch side by side.
 */
export function liveSawingProgram(diameter: number, length: number, sizes: readonly BoardSize[], kerf: number): string {
  const radius = diameter / 2;
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const places = placesIn(diameter, sizes, kerf);

  const boards = places.flatMap((lower) =>
    thicknesses.flatMap((thickness) => {
      const outer = Math.max(Math.abs(lower), Math.abs(lower + thickness));
      if (outer >= radius) return [];
      const chord = 2 * Math.sqrt(radius ** 2 - outer ** 2) + ROUNDING;
      const worth = worthAcross(
        sizes.filter((size) => size.thickness === thickness),
        chord,
        Infinity,
        length,
      );
      return worth > 0 ? [{ lower, end: lower + thickness + kerf, worth }] : [];
    }),
  );
  const name = (i: number) => `x${i}`;
  const takenAt = (place: number) =>
    boards.flatMap(({ lower, end }, i) => (lower <= place && place < end - ROUNDING ? [name(i)] : []));
  const rows = [...new Set(boards.map(({ lower }) => lower))].map(
    (place, i) => ` c${i}: ${takenAt(place).join(" + ")} <= 1`,
  );
  return [
    "Maximize",
    ` worth: ${boards.map(({ worth }, i) => `${worth} ${name(i)}`).join(" + ")}`,
    "Subject To",
    ...rows,
    "Binary",
    ...boards.map((_, i) => ` ${name(i)}`),
    "End",
  ].join("\n");
}

/** Where the lower faces of a stack may lie, from the pith. */
export function placesIn(diameter: number, sizes: readonly BoardSize[], kerf: number): readonly number[] {
  const radius = diameter / 2;
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const sums = new Set([0]);
  for (const sum of sums) {
    for (const thickness of thicknesses)
      if (sum + thickness + kerf < diameter) sums.add(rounded(sum + thickness + kerf));
  }
  const reaches = sizes
    .filter(({ width }) => width < diameter)
    .map(({ width }) => Math.sqrt(radius ** 2 - (width / 2) ** 2));
  return [...new Set([...sums].flatMap((sum) => reaches.map((reach) => rounded(sum - reach))))];
}

export const ROUNDING = 1e-7;
const rounded = (value: number) => Math.round(value * 1e9) / 1e9;
