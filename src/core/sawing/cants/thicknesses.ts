import { inches, type Inches } from "../../basis/units";
import { HAIR } from "../filling/hair";
import { markFrom } from "../scale";
import type { CantOrder } from "./cantOrder";

/** A thickness of a cant, and how far its middle need be tried from the pith. */
export interface CantThickness {
  readonly thickness: Inches;
  /** [in] */
  readonly farthest: number;
}

/**
 * The thicknesses of a cant that can matter, see bestCant: those as thick as a board is wide before all others, and
 * thick ones before thin ones.
 *
 * On a scale of step s both faces lie on marks. What a cant needs to be, m, may then be shared out between its faces so
 * that it comes out as the least number of marks from m up; or, where both faces lie m / 2 or more from the pith, each on
 * the nearest mark from there, by one mark more.
 *
 * @param widths of the flitches that may lie in a cant
 * @param reachOf how far from the pith a cant still holds one of its widest flitches [in]
 */
export function thicknessesOf(
  { thicknesses, boardWidths, bladeAboveBed, widestCut, facesBeyond }: CantOrder,
  widths: readonly Inches[],
  reachOf: (width: Inches, thickness: Inches) => number,
  scaleStep: number | undefined,
): readonly CantThickness[] {
  const thinnest = Math.max(bladeAboveBed, 2 * facesBeyond.high);
  const tried = new Map<number, CantThickness>();
  const add = (width: Inches, farthest: (thickness: Inches) => number): void => {
    const thickness = inches(markFrom(width, scaleStep));
    if (thickness <= HAIR || thickness < thinnest - HAIR || thickness > widestCut + HAIR) return;
    const known = tried.get(thickness)?.farthest ?? -1;
    tried.set(thickness, { thickness, farthest: Math.max(known, farthest(thickness)) });
  };
  const anywhere = () => Infinity;
  const byThickness = (a: number, b: number) => b - a;
  for (const width of [...(thicknesses ?? boardWidths)].sort(byThickness)) add(width, anywhere);
  if (thicknesses) return [...tried.values()];
  const needed = [...widths].sort(byThickness);
  for (const width of needed) add(width, (thickness) => reachOf(width, thickness));
  add(inches(thinnest), anywhere);
  if (scaleStep !== undefined) {
    for (const width of [...needed, inches(thinnest)]) add(inches(width + scaleStep), () => scaleStep / 2);
  }
  return [...tried.values()];
}
