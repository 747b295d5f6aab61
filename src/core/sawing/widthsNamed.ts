import { InvalidInput } from "../basis/problem";
import { inches, type Inches } from "../basis/units";

/** Random widths: from 3 in, the narrowest in common use, in steps of 1/2 in (choices of ours), or as many cm. */
const NARROWEST = 3;
const STEP = 1 / 2;
/** Wider boards than these are listed by hand. [in] */
const WIDEST = 24;
const RANGE = /^([\d.]+) *(?:to *([\d.]+)|and wider|\+)(?: *by *([\d.]+))?$/i;

/**
 * The widths that a text names: "random", "4 and wider", "4 to 12", "4 to 12 by 2"; undefined when it names none.
 *
 * @param perInch how many of the user's unit are an inch
 * @throws InvalidInput when they are none or too many
 */
export function widthsNamed(text: string, perInch = 1): readonly Inches[] | undefined {
  const range = RANGE.exec(text);
  if (!/^random/i.test(text) && !range) return undefined;
  const number = (part: string | undefined, leftOut: number) => (part === undefined ? leftOut : Number(part) / perInch);
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
