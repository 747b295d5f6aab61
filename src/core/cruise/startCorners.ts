import type { Choice } from "../basis/choices";

/** A side of the tract from which the walk begins, as a direction on the map. */
export interface StartCorner extends Choice {
  readonly east: 1 | -1;
  readonly north: 1 | -1;
}

export const southWest: StartCorner = { title: "South-west", aliases: ["SW"], east: -1, north: -1 };

export const startCorners: readonly StartCorner[] = [
  southWest,
  { title: "South-east", aliases: ["SE"], east: 1, north: -1 },
  { title: "North-west", aliases: ["NW"], east: -1, north: 1 },
  { title: "North-east", aliases: ["NE"], east: 1, north: 1 },
];
