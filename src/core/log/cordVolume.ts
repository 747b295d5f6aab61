import { requireBetween, requirePositive } from "../basis/require";
import { shareForPercent } from "../basis/shareForPercent";
import type { Source } from "../basis/source";
import { sum, type Step } from "../basis/step";
import { cubicFeet, type CubicFeet, type Feet, type Percent } from "../basis/units";

export const cordSources: readonly Source[] = [
  {
    author: "R. H. Fenton",
    year: "n.d.",
    title: "Wood content of stacked 4-foot round pulpwood in Connecticut, Station Paper NE-17",
    where: "[1] a standard cord is 4 x 4 x 8 ft, 128 ft3 of wood, bark and air",
    standing: "read",
  },
  {
    author: "Extension leaflet, as quoted on a teaching page",
    year: "n.d.",
    title: "What a cord of wood contains",
    where: "[2] 62 percent wood, 28 percent air, 10 percent bark on average",
    url: "https://education-academia.github.io/botany/botany/forestry/one-cord-of-wood-contains--cubic-ft-of-wood-air-and-bark.html",
    standing: "read",
  },
];

const CORD = 128; // ft3 [1]
/** Wood in it, bark and air left out, on average. [%] [2] */
const SOLID_SHARE = 62;

/** Cords that some wood makes when it is stacked, at the average share of wood in a pile. */
export const cordsOfWood = (wood: number): number => wood / ((CORD * SOLID_SHARE) / 100);

export const cordsWorking = (wood: number): readonly Step[] => [
  {
    sum: sum`${wood} / (${CORD} * ${SOLID_SHARE} / 100)`,
    meaning: "Stacked, by the wood in an average cord",
    value: cordsOfWood(wood),
    unit: "cord",
  },
];

/** A pile of stacked wood, over its outside. */
export interface Pile {
  readonly width: Feet;
  readonly height: Feet;
  readonly length: Feet;
}

/** Room that a pile takes up: wood, bark and air. [ft3] */
function stacked({ width, height, length }: Pile): CubicFeet {
  requirePositive("Width", width, "ft");
  requirePositive("Height", height, "ft");
  requirePositive("Length", length, "ft");
  return cubicFeet(width * height * length);
}

/**
 * Standard cords in a pile.
 *
 *     C = W H L / 128
 *
 *     C        cords              [128 ft3 of wood, bark and air]
 *     W, H, L  sides of the pile  [ft]
 *
 * @throws InvalidInput when a side is not a number above 0
 */
export const cords = (pile: Pile): number => stacked(pile) / CORD;

/**
 * Solid wood in a pile. [ft3]
 *
 * @param share solid wood in the room that the pile takes up; 62 on average [%]
 * @throws InvalidInput when a side is not above 0, or the share is not from 1 to 100
 */
export function solidInPile(pile: Pile, share: Percent): CubicFeet {
  requireBetween("Solid share", share, 0, 100, "%");
  if (share < 1) throw shareForPercent("Solid share", share);
  return cubicFeet(stacked(pile) * (share / 100));
}
