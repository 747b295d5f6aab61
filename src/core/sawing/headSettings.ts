import { InvalidInput } from "../basis/problem";
import { requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { inches, type Inches } from "../basis/units";

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Setting the head",
    where: "each cut lies one board and one kerf below the one before",
    standing: "common practice",
  },
];

/**
 * Head readings for a run of like boards, from the first to the last.
 *
 *     z(i) = z0 - i (t + k)
 *
 *     z0  reading at which the top face was opened  [in]
 *     t   rough thickness of a board, k  kerf       [in]
 *
 * @throws InvalidInput when a measure cannot be used, or the last cut would pass below the bed
 */
export function headSettings(start: Inches, thickness: Inches, kerf: Inches, pieces: number): readonly Inches[] {
  requirePositive("Start", start);
  requirePositive("Thickness", thickness);
  requireNotNegative("Kerf", kerf);
  requirePositive("Pieces", pieces);
  const readings = Array.from({ length: Math.floor(pieces) }, (_, i) => inches(start - (i + 1) * (thickness + kerf)));
  if ((readings.at(-1) ?? 0) < 0) throw new InvalidInput("The last cut would hit the bed.");
  return readings;
}
