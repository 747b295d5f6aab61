import { requireBetween } from "../../basis/require";
import { cubicFeet, feet, type CubicFeet, type Feet, type Inches } from "../../basis/units";
import { coefficientRow, type CoefficientRow, type TableName } from "./coefficientRows";
import { volumeForms } from "./forms";
import type { Coefficients, TreeEquation } from "./forms/volumeForm";
import type { Species } from "./species";
import { naturalStand, type StandOrigin } from "./standOrigins";
import type { Shape } from "./taper";

/** Bounds of the trees that the equations are asked about: a choice of ours, so that only a slip falls outside. */
export const LEAST_DBH = 1; // in
export const MOST_DBH = 150; // in
export const LEAST_HEIGHT = 5; // ft; a tree must reach breast height
export const MOST_HEIGHT = 400; // ft

/** Where a tree grows, as far as the tables tell trees apart by it. */
export interface Stand {
  /** Bailey division, blank when it is not known. */
  readonly division: string;
  readonly origin: StandOrigin;
}

export const anyStand: Stand = { division: "", origin: naturalStand };

/** A tree as the national equations know it. */
export interface HeightTree {
  /** At breast height, over bark. [in] */
  readonly dbh: Inches;
  /** From the ground to the tip. [ft] */
  readonly height: Feet;
}

/** The equations of one species in one stand, made ready to be asked of many trees. */
export interface StemEquations {
  readonly species: Species;
  /** Wood of the whole stem, from the ground to the tip. */
  readonly wood: (tree: HeightTree) => CubicFeet;
  readonly bark: (tree: HeightTree) => CubicFeet;
  /** Wood and bark by its own equation, which only the taper outside bark uses; elsewhere it is wood plus bark. */
  readonly outside: (tree: HeightTree) => CubicFeet;
  readonly shapeInside: Shape;
  readonly shapeOutside: Shape;
}

/**
 * The stem volume equations of a species in a stand.
 *
 * @throws OutOfRange for woodland trees, for which there are none
 */
export function stemEquations(species: Species, { division, origin }: Stand): StemEquations {
  const row = (table: TableName) => coefficientRow(table, species, division, origin);
  const volume = (table: TableName) => {
    const equation = equationOf(row(table), species);
    return ({ dbh, height }: HeightTree) => cubicFeet(equation(dbh, height));
  };
  return {
    species,
    wood: volume("woodVolume"),
    bark: volume("barkVolume"),
    outside: volume("outsideVolume"),
    shapeInside: shapeOf(row("insideRatio")),
    shapeOutside: shapeOf(row("outsideRatio")),
  };
}

/** The equation that a row of coefficients stands for. */
export function equationOf(row: CoefficientRow, species: Species): TreeEquation {
  const form = volumeForms.find(({ model }) => model === row.model);
  if (!form) throw new RangeError(`no form for model ${row.model}`);
  return form.equation(row as Coefficients, species);
}

function shapeOf({ alpha, beta }: CoefficientRow): Shape {
  if (alpha === undefined || beta === undefined) throw new RangeError("a ratio row without alpha and beta");
  return { alpha, beta };
}

/** @throws InvalidInput when a measure is not a number within the bounds */
export function requireHeightTree({ dbh, height }: HeightTree): void {
  requireBetween("DBH", dbh, LEAST_DBH, MOST_DBH, "in");
  requireBetween("Height", height, LEAST_HEIGHT, MOST_HEIGHT, "ft");
}

/** Stump that merchantable volume leaves standing. [ft] */
export const STUMP = feet(1);
