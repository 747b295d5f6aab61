/** What the sheet Setup holds, one named cell each. */
export interface Settings {
  readonly stand: string;
  /** [ac] */
  readonly acres: number | null;
  /** How far the acres may be off either way. [ac] */
  readonly acresMargin: number;
  readonly method: "Point" | "Fixed";
  /** Basal area factor [ft2/ac] for points, plot size [ac] for fixed plots. */
  readonly size: number;
  /** [%] */
  readonly confidence: number;
  /** Margin the owner can live with, of the volume per acre. [%] */
  readonly target: number;
  readonly rule: string;
  /** Girard form class. [%] */
  readonly formClass: number;
  /** Width of the diameter classes. [in] */
  readonly classWidth: number;
  /** Diameters that the checks let pass. [in] */
  readonly minDbh: number;
  readonly maxDbh: number;
  /** [in] */
  readonly kerf: number;
  /** Share of the geometrical best that the owner's sawing reaches. [%] */
  readonly realized: number;
}

/** Where a cruise of one's own starts; each is a choice of ours and is changed on Setup. */
export const usualSettings: Settings = {
  stand: "My woodlot",
  acres: null,
  acresMargin: 0,
  method: "Point",
  size: 10,
  confidence: 95,
  target: 20,
  rule: "International 1/4",
  formClass: 78,
  classWidth: 2,
  minDbh: 5,
  maxDbh: 60,
  kerf: 0.125,
  realized: 85,
};
