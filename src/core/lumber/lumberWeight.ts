import { InvalidInput } from "../basis/problem";
import { requireBetween, requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { sum, type Step } from "../basis/step";
import { pounds, type BoardFeet, type Percent, type Pounds } from "../basis/units";
import { FIBRE_SATURATION } from "./fibreSaturation";
import type { Wood } from "./wood";

export const lumberWeightSources: readonly Source[] = [
  {
    author: "Forest Products Laboratory",
    year: "2010",
    title: "Wood Handbook, FPL-GTR-190",
    where: "[1] chapter 4: specific gravity below fibre saturation, density, and the most water that wood can hold",
    standing: "from memory",
  },
  {
    author: "Forest Products Laboratory",
    year: "1952",
    title: "Technical Note 218",
    where: "[2] such weights serve for loading a truck, not for a freight contract",
    url: "http://ufdc.ufl.edu/AA00026020/00001",
    standing: "read",
  },
];

const WATER = 62.4; // lb/ft3 [1]
const CELL_WALL = 1.54; // specific gravity of the wood substance itself [1]
const VOLUME_LOST = 0.265; // of the volume for each unit of specific gravity, green to ovendry [1]
const BOARD_FEET = 12; // in a cubic foot

/**
 * Weight of lumber.
 *
 *     W = B / 12 * 62.4 Gx (1 + M / 100)
 *     Gx = Gb / (1 - 0.265 Gb (1 - M / 30)) below 30 %, and Gb from 30 % up
 *
 *     W   weight                                                        [lb]
 *     B   wood that is there, its full measures at that moisture        [bf]
 *     M   moisture content                                              [% of the ovendry weight]
 *     Gb  basic specific gravity: ovendry weight over green volume
 *     Gx  the same over the volume at M
 *
 * A nominal tally holds less wood than it says and weighs less. Trees of a species differ by a tenth and more; such
 * weights are for loading a truck [2].
 *
 * @throws InvalidInput when the board feet are not above 0, or M is below 0 or more than the wood can hold
 */
export function lumberWeight(volume: BoardFeet, wood: Wood, moisture: Percent): Pounds {
  requirePositive("Board feet", volume, "bf");
  return pounds((volume / BOARD_FEET) * density(wood, moisture));
}

/** Weight of a cubic foot of wood, its volume taken at that moisture content. [lb/ft3] */
export function density(wood: Wood, moisture: Percent): number {
  requireBetween("Moisture content", moisture, 0, 300, "%");
  const most = mostMoisture(wood.gravity);
  if (moisture > most) {
    throw new InvalidInput(
      `Wood of ${wood.name} holds at most ${shown(Math.floor(most))} % water. You have ${shown(moisture)}.`,
    );
  }
  return WATER * gravityAt(wood.gravity, moisture) * (1 + moisture / 100);
}

/** Specific gravity with the volume taken at a moisture content. */
export const gravityAt = (basic: number, moisture: Percent): number => basic / (1 - volumeLost(basic, moisture));

const volumeLost = (basic: number, moisture: Percent): number =>
  VOLUME_LOST * basic * Math.max(0, 1 - moisture / FIBRE_SATURATION);

/** Moisture content at which no room is left in the wood. [%] */
export const mostMoisture = (basic: number): number => (100 * (CELL_WALL - basic)) / (CELL_WALL * basic);

/** The way to the weight, step by step; the last step is what lumberWeight gives. */
export function lumberWeightWorking(volume: BoardFeet, wood: Wood, moisture: Percent): readonly Step[] {
  const weight = lumberWeight(volume, wood, moisture);
  const cubicFeet = volume / BOARD_FEET;
  const gravity = gravityAt(wood.gravity, moisture);
  const pound = density(wood, moisture);
  const dry = moisture < FIBRE_SATURATION;
  return [
    { sum: sum`${volume} / ${BOARD_FEET}`, meaning: "Cubic feet of wood", value: cubicFeet, unit: "ft3" },
    {
      sum: dry
        ? sum`${wood.gravity} / (1 - ${VOLUME_LOST} * ${wood.gravity} * (1 - ${moisture} / ${FIBRE_SATURATION}))`
        : sum`${wood.gravity}`,
      meaning: `Specific gravity of ${wood.name}${dry ? ", its volume at that moisture" : ", green volume"}`,
      value: gravity,
      unit: "of water",
    },
    {
      sum: sum`${WATER} * ${gravity} * (1 + ${moisture} / 100)`,
      meaning: "Weight of a cubic foot, water in it included",
      value: pound,
      unit: "lb/ft3",
    },
    { sum: sum`${cubicFeet} * ${pound}`, meaning: "Times the cubic feet", value: weight, unit: "lb" },
  ];
}
