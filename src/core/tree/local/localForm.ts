import type { Choice } from "../../basis/choices";
import type { Source } from "../../basis/source";

/** A tree that was felled and measured. Every measure is in the owner's own units, and so is what is fitted. */
export interface FelledTree {
  readonly dbh: number;
  readonly height: number;
  readonly volume: number;
}

/** Coefficients as the equation of a form names them; c only where the form has one. */
export interface LocalCoefficients {
  readonly a: number;
  readonly b: number;
  readonly c?: number;
}

/** A shape that a local volume table can take. */
export interface LocalForm extends Choice {
  /** As it is shown: "V = a + b D2 H". */
  readonly equation: string;
  readonly sources: readonly Source[];
  /** What the volume, or what is fitted in its place, is a sum of. */
  terms(tree: Omit<FelledTree, "volume">): readonly number[];
  /** What is fitted: the volume itself, or something that grows with it. */
  fitted(volume: number): number;
  /**
   * The coefficients of the equation from those of the sum.
   * @param correction factor that turns the middle of the fitted trees into their mean
   */
  coefficients(solution: readonly number[], correction: number): LocalCoefficients;
  /** @param variance residual variance of what was fitted */
  correction(variance: number): number;
  /** How much the volume moves where what is fitted moves by one, at a tree's volume. */
  perFitted(volume: number): number;
  volume(coefficients: LocalCoefficients, dbh: number, height: number): number;
}
