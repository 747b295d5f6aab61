import type { SawLog } from "./sawLog";

/** How far from the pith a plane must lie so that its face is no wider than a saw can cut, at the large end. [in] */
export function firstFaceFrom({ largeEnd }: SawLog, widestCut: number): number {
  return widestCut >= largeEnd ? 0 : Math.sqrt((largeEnd / 2) ** 2 - (widestCut / 2) ** 2);
}
