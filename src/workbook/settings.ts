import { classesInTheMiddle } from "../core/cruise/classRules";
import { pointSample } from "../core/cruise/methods/pointSample";
import { byLogs } from "../core/cruise/checkHeight";
import { halfDown } from "../core/log/diameterRounding";
import { asTheRuleDoes } from "../core/log/scaleRounding";
import { naturalStand } from "../core/tree/national/standOrigins";

/** How the buyer of the logs scales them; each is a named cell on top of the sheet Logs. */
export interface ScaleConventions {
  readonly rule: string;
  /** What is done with the fraction of a diameter. */
  readonly diameterRounding: string;
  /** What is done with the board feet that the rule gives. */
  readonly rounding: string;
  /** Longest length scaled as one piece [ft]; null where there is no limit. */
  readonly longest: number | null;
  /** Left on a log beyond its scaling length. [ft] */
  readonly trim: number;
  /** Step in which lengths are scaled. [ft] */
  readonly lengthStep: number;
}

/** What a finished board loses between the saw and its use; each is a named cell on the sheet Mill. */
export interface ThicknessLosses {
  /** In thickness, from green to the moisture it is used at. [%] */
  readonly shrinkage: number;
  /** Both faces together. [in] */
  readonly planing: number;
  /** Allowance for uneven sawing. [in] */
  readonly variation: number;
}

/** What the sheet Setup holds, one named cell each, and how logs are scaled. */
export interface Settings {
  readonly stand: string;
  /** [ac] */
  readonly acres: number | null;
  /** How far the acres may be off either way. [ac] */
  readonly acresMargin: number;
  readonly method: string;
  /** Basal area factor [ft2/ac] for points, size [ac] of a plot, a strip or the tract. */
  readonly size: number;
  /** [%] */
  readonly confidence: number;
  /** Margin the owner can live with, of the volume per acre. [%] */
  readonly target: number;
  readonly rule: string;
  /** Girard form class. [%] */
  readonly formClass: number;
  /** What was measured of the height of the trees: logs, total height, or both. */
  readonly heightMeasured: string;
  /** Height that the stems are drawn from when they are cut into products; null follows what was measured. */
  readonly productsBy: string | null;
  /** Bailey ecodivision and origin of the stand, for the national equations. */
  readonly division: string | null;
  readonly origin: string;
  /** Width of the diameter classes. [in] */
  readonly classWidth: number;
  /** Where the limits of the classes lie. */
  readonly classRule: string;
  /** Diameters that the checks let pass. [in] */
  readonly minDbh: number;
  readonly maxDbh: number;
  /** [in] */
  readonly kerf: number;
  readonly scale: ScaleConventions;
  readonly losses: ThicknessLosses;
  /** Share of the geometrical best that the owner's sawing reaches. [%] */
  readonly realized: number;
}

/** Where a cruise of one's own starts; each is a choice of ours and is changed on Setup. */
export const usualSettings: Settings = {
  stand: "My woodlot",
  acres: null,
  acresMargin: 0,
  method: pointSample.title,
  size: 10,
  confidence: 95,
  target: 20,
  rule: "International 1/4",
  formClass: 78,
  heightMeasured: byLogs.title,
  productsBy: null,
  division: null,
  origin: naturalStand.title,
  classWidth: 2,
  classRule: classesInTheMiddle.title,
  minDbh: 5,
  maxDbh: 60,
  kerf: 0.125,
  scale: {
    rule: "International 1/4",
    diameterRounding: halfDown.title,
    rounding: asTheRuleDoes.title,
    longest: null,
    trim: 0,
    lengthStep: 1,
  },
  losses: { shrinkage: 5, planing: 0.125, variation: 0.0625 },
  realized: 85,
};
