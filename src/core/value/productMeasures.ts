import { OutOfRange } from "../basis/problem";
import { shown } from "../basis/require";
import type { Step } from "../basis/step";
import { percent, type Feet, type Inches } from "../basis/units";
import { cordsOfWood, cordsWorking } from "../log/cordVolume";
import type { CubicFormula, MeasuredLog } from "../log/cubic/cubicFormula";
import { grossScale } from "../log/grossScale";
import type { LogRule } from "../log/logRule";
import { scaleWorking } from "../log/scaleWorking";

/** A log as it lies in a standing stem. */
export interface StemLog {
  /** Inside bark, where it is cut off at the top. [in] */
  readonly smallEnd: Inches;
  /** Inside bark, at the bottom and half way up the length that is bought. [in] */
  readonly largeEnd: () => Inches;
  readonly middle: () => Inches;
  /** Trim left out. [ft] */
  readonly length: Feet;
  /** Wood in that length, by the stem curve. [ft3] */
  readonly wood: () => number;
}

/** How a product is measured for its price. */
export interface ProductMeasure {
  readonly unit: "bf" | "ft3" | "cord";
  /** How much of the unit its price is for. */
  readonly perPrice: number;
  /** Volume of a log; undefined where the rule has no value for it. */
  volume(log: StemLog): number | undefined;
  /** The way to it, for a log that has a volume. */
  working(log: StemLog): readonly Step[];
}

/** Board feet as the rule gives and rounds them, at a price per thousand. */
export const byRule = (rule: LogRule): ProductMeasure => ({
  unit: "bf",
  perPrice: 1000,
  volume({ smallEnd, length }) {
    try {
      return grossScale(rule, { diameter: smallEnd, length });
    } catch (problem) {
      if (problem instanceof OutOfRange) return undefined;
      throw problem;
    }
  },
  working: ({ smallEnd, length }) => scaleWorking(rule, { diameter: smallEnd, length }, percent(0)),
});

/** Cubic feet as a formula has them from the ends or the middle, at a price for one. */
export const byFormula = (formula: CubicFormula): ProductMeasure => ({
  unit: "ft3",
  perPrice: 1,
  volume: (log) => formula.volume(measuredLog(log)),
  working: (log) => formula.working(measuredLog(log)),
});

const measuredLog = ({ smallEnd, largeEnd, middle, length }: StemLog): MeasuredLog => ({
  smallEnd,
  largeEnd: largeEnd(),
  middle: middle(),
  length,
});

/** Cubic feet of wood by the stem curve, at a price for one. */
export const byWood: ProductMeasure = {
  unit: "ft3",
  perPrice: 1,
  volume: ({ wood }) => wood(),
  working: (log) => [woodByCurve(log)],
};

/** Stacked cords, from the wood by the stem curve, at a price for one. */
export const byCord: ProductMeasure = {
  unit: "cord",
  perPrice: 1,
  volume: ({ wood }) => cordsOfWood(wood()),
  working: (log) => [woodByCurve(log), ...cordsWorking(log.wood())],
};

const woodByCurve = ({ wood, length }: StemLog): Step => ({
  sum: `over ${shown(length)} ft`,
  meaning: "Wood in it, by the curve of the stem",
  value: wood(),
  unit: "ft3",
});
