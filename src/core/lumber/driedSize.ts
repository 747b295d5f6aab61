import { requireBetween, requirePositive } from "../basis/require";
import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";
import { inches, percent, type Inches, type Percent } from "../basis/units";
import { FIBRE_SATURATION } from "./fibreSaturation";
import type { Wood } from "./wood";

export const driedSizeSources: readonly Source[] = [
  {
    author: "Forest Products Laboratory",
    year: "2010",
    title: "Wood Handbook, FPL-GTR-190",
    where: "[1] shrinkage to any moisture content: in proportion to what is lost below fibre saturation",
    standing: "from memory",
  },
  {
    author: "Forest Products Laboratory",
    year: "2010",
    title: "Wood Handbook, FPL-GTR-190",
    where: "[2] p. 4-2: fibre saturation averages about 30 %",
    standing: "read",
  },
];

/** Which way a size lies in the board, and so which of the two shrinkages it follows. */
export interface Grain extends Choice {
  shrinkageOf(wood: Wood): Percent;
}

export const flat: Grain = {
  title: "Flat",
  aliases: ["Flat-sawn", "Flatsawn", "Plain-sawn", "Tangential"],
  shrinkageOf: ({ tangential }) => tangential,
};

export const quarter: Grain = {
  title: "Quarter",
  aliases: ["Quarter-sawn", "Quartersawn", "Radial"],
  shrinkageOf: ({ radial }) => radial,
};

export const grains: readonly Grain[] = [flat, quarter];

/**
 * Size of a piece of wood after its moisture content has changed: it shrinks as it dries and swells as it takes on
 * moisture.
 *
 *     D = D1 (1 - S(M2) / 100) / (1 - S(M1) / 100),   S(M) = S0 (30 - M) / 30, and 0 from 30 % up
 *
 *     D       size afterwards                                       [in]
 *     D1      size before                                           [in]
 *     M1, M2  moisture content before and after                     [%]
 *     S0      shrinkage from green to ovendry in that direction     [% of the green size]
 *
 * Sizes at both moisture contents are reckoned from the same green size. Taken at 10 % this is the change coefficient
 * of the handbook, S0 / (3000 - 20 S0) for each percent. Species scatter, and so do boards of one tree.
 *
 * @throws InvalidInput when the size is not above 0, the shrinkage not between 0 and 50, or a moisture not 0 to 300
 */
export function driedSize(size: Inches, shrinkage: Percent, from: Percent, to: Percent): Inches {
  requirePositive("Size", size);
  requireBetween("Shrinkage", shrinkage, 0, 50, "%");
  return inches((size * shareLeft(shrinkage, to)) / shareLeft(shrinkage, from));
}

/** Shrinkage from green to a moisture content. [% of the green size] [1] */
export function shrinkageTo(shrinkage: Percent, moisture: Percent): Percent {
  requireBetween("Moisture content", moisture, 0, 300, "%");
  return percent((shrinkage * Math.max(0, FIBRE_SATURATION - moisture)) / FIBRE_SATURATION); // [2]
}

const shareLeft = (shrinkage: Percent, moisture: Percent) => 1 - shrinkageTo(shrinkage, moisture) / 100;
