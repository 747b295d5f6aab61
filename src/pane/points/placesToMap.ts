import { localPlane, type Place } from "../../core/cruise/localPlane";
import { outlineAcres, withoutRepeats } from "../../core/cruise/outline";
import { withoutLoops } from "../../core/cruise/withoutLoops";
import type { OutlineReading } from "./outlineReading";

/**
 * Places on the earth as an outline on a flat map, 0, 0 at the south-west of them all.
 * @param walked true for a track, whose small loops are slips of the receiver and are cut off
 */
export function placesToMap(places: readonly Place[], source: string, walked = false): OutlineReading {
  const origin = {
    latitude: Math.min(...places.map(({ latitude }) => latitude)),
    longitude: Math.min(...places.map(({ longitude }) => longitude)),
  };
  const plane = localPlane(origin);
  const given = withoutRepeats(places.map((place) => plane.toMap(place)));
  const { track, loops } = walked ? withoutLoops(given) : { track: given, loops: 0 };
  outlineAcres(track); // refuses what is no outline
  const notes =
    loops > 0
      ? [
          `${loops === 1 ? "A small loop" : `${loops} small loops`} of the track ${loops === 1 ? "was" : "were"} cut off.`,
        ]
      : [];
  return { corners: track, source, origin, notes };
}
