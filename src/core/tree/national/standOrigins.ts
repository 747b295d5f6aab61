import type { Choice } from "../../basis/choices";

/** How a stand began. Only slash and loblolly pine are told apart by it. */
export interface StandOrigin extends Choice {
  /** As the keys of the coefficients have it. */
  readonly letter: string;
}

export const naturalStand: StandOrigin = { title: "Natural", aliases: ["Not planted"], letter: "n" };
const planted: StandOrigin = { title: "Planted", aliases: ["Plantation"], letter: "p" };

export const standOrigins: readonly StandOrigin[] = [naturalStand, planted];
