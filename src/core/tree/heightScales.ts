import type { Choice } from "../basis/choices";

/** What is engraved on an instrument that reads angles of elevation. */
export interface HeightScale extends Choice {
  /** Largest reading, up or down, that is taken for a true one. */
  readonly largestReading: number;
  readonly unit: string;
  /** Rise over run, the tangent of the angle, that a reading stands for. */
  rise(reading: number): number;
}

/** Feet of rise in 100 feet. */
export const percentScale: HeightScale = {
  title: "Percent",
  aliases: ["%"],
  largestReading: 1000,
  unit: "%",
  rise: (reading) => reading / 100,
};

const degrees: HeightScale = {
  title: "Degrees",
  aliases: ["Degree"],
  largestReading: 89,
  unit: "degrees",
  rise: (reading) => Math.tan((reading * Math.PI) / 180),
};

/** Feet of rise in one chain of 66 feet. */
const topographic: HeightScale = {
  title: "Topo",
  aliases: ["Topographic", "66"],
  largestReading: 660,
  unit: "topo units",
  rise: (reading) => reading / 66,
};

export const heightScales: readonly HeightScale[] = [percentScale, degrees, topographic];
