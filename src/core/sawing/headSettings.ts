import { InvalidInput } from "../basis/problem";
import { requireNotNegative, requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { inches, type Inches } from "../basis/units";
import { HAIR } from "./filling/hair";
import { markUpTo } from "./scale";

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Setting the head",
    where: "each cut lies one board and one kerf below the one before",
    standing: "common practice",
  },
];

/** A run of like boards from an opened face down. */
export interface EqualBoards {
  /** Reading at which the top face was opened. */
  readonly start: Inches;
  /** Rough thickness of a board, at least. */
  readonly thickness: Inches;
  readonly kerf: Inches;
  readonly pieces: number;
  /** Step of the scale that the head is set by; left out, it stops anywhere. [in] */
  readonly scaleStep?: number | undefined;
  /** The lowest that the blade can go; left out, down to the bed. [in] */
  readonly bladeAboveBed?: number | undefined;
}

/** One cut and the board that it frees. */
export interface HeadSetting {
  readonly reading: Inches;
  readonly thickness: Inches;
}

/**
 * Head readings for a run of like boards, from the first to the last.
 *
 *     z(i) = mark(z(i-1) - (t + k)),   board i is z(i-1) - z(i) - k thick
 *
 *     z0    reading at which the top face was opened             [in]
 *     t     rough thickness of a board, k  kerf                  [in]
 *     mark  the highest mark of the scale up to a height, the height itself where there is no scale
 *
 * So on a scale a board comes out as thick as wanted or thicker by less than a step, never thinner.
 *
 * @throws InvalidInput when a measure cannot be used, or the last cut would pass below the bed or the reach of the blade
 */
export function headSettings({
  start,
  thickness,
  kerf,
  pieces,
  scaleStep,
  bladeAboveBed = 0,
}: EqualBoards): readonly HeadSetting[] {
  requirePositive("Start", start);
  requirePositive("Thickness", thickness);
  requireNotNegative("Kerf", kerf);
  requirePositive("Pieces", pieces);
  if (!Number.isInteger(pieces)) throw new InvalidInput(`Pieces should be a whole number. You have ${shown(pieces)}.`);
  if (scaleStep !== undefined) requirePositive("Scale step", scaleStep, "in");
  const settings: HeadSetting[] = [];
  let above: number = start;
  for (let cut = 1; cut <= pieces; cut += 1) {
    const reading = markUpTo(above - (thickness + kerf), scaleStep);
    if (reading < 0 - HAIR) throw new InvalidInput("The last cut would hit the bed.");
    if (reading < bladeAboveBed - HAIR)
      throw new InvalidInput(
        (telling) =>
          `Cut ${cut} would be ${told(telling, Math.max(0, reading), "in")} above the bed, ` +
          `and your blade stops ${told(telling, bladeAboveBed, "in")} above it.`,
      );
    settings.push({ reading: inches(Math.max(0, reading)), thickness: inches(above - reading - kerf) });
    above = reading;
  }
  return settings;
}
