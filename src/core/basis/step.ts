import { shown } from "./require";

/** One step of a working, as a reader would set it down on paper. */
export interface Step {
  /** The arithmetic in figures, or what was looked up where there is none. */
  readonly sum: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
}

/** Arithmetic written out with the very figures that were used: sum`${14} - ${4}` is "14 - 4". */
export const sum = (signs: TemplateStringsArray, ...figures: readonly number[]): string =>
  signs.map((sign, i) => sign + (i < figures.length ? shown(figures[i] as number) : "")).join("");
