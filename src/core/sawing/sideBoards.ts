import { candidates, fromOtherEnd } from "./candidates";
import { onBark } from "./setting";
import { waysToFill } from "./filling/fill";
import type { Way } from "./filling/way";
import type { Flitch } from "./flitches";
import type { LyingLog } from "./lyingLog";
import type { Face } from "./outline";
import type { RoomFor } from "./room";
import { placesOnScale } from "./scale";
import type { Sawing } from "./sawnFlitch";
import type { Sides } from "./sides";

/**
 * The ways to saw the wood outside a plane of a face, seen with that face down and the plane above: of a symmetrical log
 * what lies at or below the pith, of any other all. Sides are as seen with the face up.
 */
export type SideBoards = (face: Face, sides: Sides) => readonly Way<Flitch>[];

/** Patterns and their hearts or cants share them, and in a plain log all faces do. */
export function sideBoardsOf(
  groups: readonly (readonly Flitch[])[],
  roomFor: RoomFor,
  { lying, kerf, scaleStep }: Sawing,
): SideBoards {
  const known = new Map<string, readonly Way<Flitch>[]>();
  return (face, sides) => {
    const anyFace = lying.isPlain && scaleStep === undefined;
    const key = `${anyFace ? "" : face} ${sides.left} ${sides.right}`;
    const ways = known.get(key);
    if (ways) return ways;
    const fromAbove = candidates(roomFor, groups, face, sides);
    const slots = lying.isSymmetrical ? fromAbove : fromAbove.map(fromOtherEnd); // bounds of a symmetrical log are the same both ways
    const onScale = scaleStep === undefined ? undefined : placesOnScale(scaleStep, markSeenFrom(face, lying), kerf);
    const found = waysToFill(slots, kerf, { ...(lying.isSymmetrical && { upTo: 0 }), ...(onScale && { onScale }) });
    known.set(key, found);
    return found;
  };
}

/** A mark of the scale, seen with a face down; opposite faces keep to the marks of the one that looked up first. */
function markSeenFrom(face: Face, lying: LyingLog): number {
  switch (face) {
    case "top":
      return onBark(lying, "top").pithHeight;
    case "right":
      return onBark(lying, "right").pithHeight;
    case "bottom":
      return 0 - onBark(lying, "top").pithHeight;
    case "left":
      return 0 - onBark(lying, "right").pithHeight;
  }
}
