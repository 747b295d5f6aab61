import { HAIR } from "../filling/hair";
import { sectionsTo } from "../lyingLog";
import { ROOM_STEP } from "../room";
import type { Sawing } from "../sawnFlitch";
import { onBark } from "../setting";
import { toTheBark } from "../sides";
import type { CantOrder } from "./cantOrder";

/**
 * Places for one face of a cant, as far from the pith, from the innermost outwards: the outermost ones that leave the
 * same side boards beyond them, and the bark. On a scale the last marks before those. Where the mill has a widest cut,
 * every mark or every 1/32 in as well.
 */
export function facesOf(
  face: "top" | "bottom",
  order: CantOrder,
  { log, lying, scaleStep }: Sawing,
): readonly number[] {
  const { facesBeyond, widestCut } = order;
  const isTop = face === "top";
  const innermost = isTop ? facesBeyond.high : 0 - facesBeyond.low;
  const outermost = Math.max(...sectionsTo(lying, log.length, face).map(({ v, b }) => v + b));
  // The marks of both faces are those of the upper one.
  const onMark = scaleStep === undefined ? 0 : (isTop ? -1 : 1) * onBark(lying, "top").pithHeight;
  const markUpTo = (height: number) =>
    scaleStep === undefined ? height : onMark + Math.floor((height - onMark) / scaleStep + HAIR) * scaleStep;
  const steps = order
    .sideBoards(face, toTheBark)
    .map(({ free }) => markUpTo(free === -Infinity ? outermost + (scaleStep ?? 0) : 0 - free));
  const step = scaleStep ?? ROOM_STEP;
  const count = widestCut === Infinity ? 0 : Math.ceil((outermost - innermost) / step) + 1;
  const all = Array.from({ length: count }, (_, i) => markUpTo(innermost + step) + (i - 1) * step);
  return [...new Set([...steps, ...all])].filter((place) => place >= innermost - HAIR).sort((a, b) => a - b);
}
