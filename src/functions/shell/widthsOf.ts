import { inches, type Inches } from "../../core/basis/units";
import { widthsNamed } from "../../core/sawing/widthsNamed";
import { boundsIn } from "./measuredIn";
import { boundedNumber } from "./readings";
import type { Unit } from "./unitSystem";

/** One width, or those that a text names: "random", "4 and wider", "4 to 12", "4 to 12 by 2". */
export function widthsOf(cell: unknown, { name, perOurs }: Unit): readonly Inches[] {
  const named = typeof cell === "string" ? widthsNamed(cell.trim(), perOurs) : undefined;
  return named ?? [inches(boundedNumber(cell, "Board width", boundsIn({ name, perOurs }, 0.1, 120)) / perOurs)];
}
