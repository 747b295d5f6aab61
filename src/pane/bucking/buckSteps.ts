import type { CellValue } from "../../workbook/plan";
import { figure } from "../figures";
import { number, text } from "../job/cells";

/** One log of the plan: a row of the sheet's answer. */
export interface BuckStep {
  readonly number: number;
  readonly product: string;
  /** Heights above the ground of its two ends, trim included. */
  readonly from: number;
  readonly to: number;
  /** Length that is bought. */
  readonly length: number;
  readonly largeEnd: number;
  readonly smallEnd: number;
  readonly volume: number;
  readonly value: number;
}

/** Units as the headings of the answer have them, such as "ft" in "From ft". */
export interface BuckUnits {
  readonly distance: string;
  readonly diameter: string;
  readonly volume: string;
}

const unitIn = (heading: CellValue | undefined) => text(heading).replace(/^\S+( end)? /, "");

export const unitsOf = (header: readonly CellValue[]): BuckUnits => ({
  distance: unitIn(header[1]),
  diameter: unitIn(header[4]),
  volume: unitIn(header[5]),
});

/** The plan row by row: log, from, to, product, small end, volume, value, length, large end. */
export const stepsOf = (rows: readonly (readonly CellValue[])[]): readonly BuckStep[] =>
  rows.flatMap((row) => {
    const [log, from, to, , smallEnd, volume, value, length, largeEnd] = row.map(number);
    if (log == null || from == null || to == null || smallEnd == null || largeEnd == null) return [];
    if (volume == null || value == null || length == null) return [];
    return [{ number: log, product: text(row[3]), from, to, length, largeEnd, smallEnd, volume, value }];
  });

/** A cut in words: how far up from the butt cut, and what comes off. */
export function sayCut(step: BuckStep, stump: number, { distance, diameter, volume }: BuckUnits): string {
  const { product, from, to, length, smallEnd, value } = step;
  const wood = volume.includes(" or ") ? "" : `, ${figure(step.volume, volume === "bf" ? 0 : 1)} ${volume}`;
  return (
    `${product}, ${figure(length, 1)} ${distance}: from ${figure(from - stump, 1)} to ${figure(to - stump, 1)} ${distance} ` +
    `above the butt cut. Small end ${figure(smallEnd, 1)} ${diameter}${wood}, ${dollars(value)}.`
  );
}

export const dollars = (value: number): string => `$${figure(value, 2)}`;
