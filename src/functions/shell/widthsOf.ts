import { InvalidInput } from "../../core/basis/problem";
import { inches, type Inches } from "../../core/basis/units";
import { boundsIn } from "./measuredIn";
import { boundedNumber } from "./readings";
import type { Unit } from "./unitSystem";

/** Random widths: from 3 in, the narrowest in common use, in steps of 1/2 in (choices of ours), or as many cm. */
const NARROWEST = 3;
const STEP = 1 / 2;
/** Wider boards than these are listed by hand. [in] */
const WIDEST = 24;
const RANGE = /^([\d.]+) *(?:to *([\d.]+)|and wider|\+)(?: *by *([\d.]+))?$/i;

/** One width, or those that a text names: "random", "4 and wider", "4 to 12", "4 to 12 by 2". */
export function widthsOf(cell: unknown, { name, perOurs }: Unit): readonly Inches[] {
  const text = typeof cell === "string" ? cell.trim() : "";
  const isRandom = /^random/i.test(text);
  const range = RANGE.exec(text);
  if (!isRandom && !range) {
    return [inches(boundedNumber(cell, "Board width", boundsIn({ name, perOurs }, 0.1, 120)) / perOurs)];
  }
  const number = (part: string | undefined, leftOut: number) => (part === undefined ? leftOut : Number(part) / perOurs);
  const from = number(range?.[1], NARROWEST);
  const to = number(range?.[2], WIDEST);
  const step = number(range?.[3], STEP);
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (!(from > 0 && step > 0 && count >= 1 && count <= 100)) {
    throw new InvalidInput(
      `Board width should be a number, "random", "4 and wider" or "4 to 12 by 2", of 100 widths at most. You have "${text.slice(0, 40)}".`,
    );
  }
  return Array.from({ length: count }, (_, i) => inches(from + i * step));
}
