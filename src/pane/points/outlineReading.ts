import type { Outline } from "../../core/cruise/outline";
import type { Place } from "../../core/cruise/localPlane";

/** What the numbers of a pasted corner are. */
export const cornerUnits = [
  { id: "looks", title: "As they look" },
  { id: "feet", title: "Feet east, feet north" },
  { id: "chains", title: "Chains east, chains north" },
  { id: "meters", title: "Meters east, meters north" },
  { id: "degrees", title: "Latitude, longitude" },
] as const;

export type CornerUnit = (typeof cornerUnits)[number]["id"];

/** An outline as it was read, on a flat map in feet. */
export interface OutlineReading {
  readonly corners: Outline;
  /** Where it came from, in words. */
  readonly source: string;
  /** The place 0, 0 of the map; undefined where the outline was measured from a corner. */
  readonly origin: Place | undefined;
  /** What was done to it, or should be looked at. */
  readonly notes: readonly string[];
}
