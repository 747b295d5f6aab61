import type { Feet, Inches } from "../../../basis/units";

/** Coefficients of one row of a table, named as the tables name them; which ones there are depends on the form. */
export interface Coefficients {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly a1: number;
  readonly b1: number;
  readonly c1: number;
}

/** What a form needs to know of the tree's kind. */
export interface Kind {
  readonly name: string;
  readonly softwood: boolean;
  /** Oven-dry weight over green volume, as a specific gravity; undefined where the species list has none. */
  readonly woodGravity: number | undefined;
}

/** Cubic feet or pounds of a tree by its diameter at breast height and its total height. */
export type TreeEquation = (dbh: Inches, height: Feet) => number;

/** One of the shapes that the national equations take. It is made ready once for a row, and then asked of many trees. */
export interface VolumeForm {
  /** Its number in the tables. */
  readonly model: number;
  readonly title: string;
  equation(coefficients: Coefficients, kind: Kind): TreeEquation;
}
