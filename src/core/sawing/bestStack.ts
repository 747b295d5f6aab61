import { candidates } from "./candidates";
import type { Way } from "./filling/way";
import type { Flitch } from "./flitches";
import type { Face } from "./outline";
import type { RoomFor } from "./room";
import type { Sawing } from "./sawnFlitch";
import type { Sides } from "./sides";
import { bestOnBed, partsOnBed, type BedLimits } from "./stackOnBed";

/** The best filling of a whole log between two planes that are sawn already, with one piece left on the bed. */
export function bestStack(
  groups: readonly (readonly Flitch[])[],
  face: Face,
  sides: Sides,
  roomFor: RoomFor,
  limits: BedLimits,
  sawing: Sawing,
): Way<Flitch> | undefined {
  const slots = partsOnBed(groups, limits, sawing.scaleStep).flatMap(({ flitches, kind }) =>
    candidates(roomFor, [flitches], face, sides).map((group) => ({ slots: group, kind })),
  );
  return bestOnBed(slots, face, sawing);
}
