import { CM_PER_INCH, M_PER_FOOT } from "../../core/basis/metric";
import type { LocalUnits } from "../job/readLocalVolume";

/** A felled tree as it is being typed. */
export interface FelledForm {
  readonly dbh: string;
  readonly height: string;
  readonly volume: string;
}

export interface LocalState {
  readonly form: FelledForm;
  /** Problems are told once the tree was to be added. */
  readonly tried: boolean;
}

export const firstLocal: LocalState = { form: { dbh: "", height: "", volume: "" }, tried: false };

export type FelledMeasures = Readonly<Record<keyof FelledForm, number>>;
export type FelledProblems = Readonly<Partial<Record<keyof FelledForm, string>>>;

/** Bounds that only a slip falls outside, in inches and feet; a metric user's are wider by their unit. */
const DBH = { least: 1, most: 80 };
const HEIGHT = { least: 5, most: 400 };
const MOST_WOOD = 10_000;

/** Reads the form; the problems stand beside their boxes. */
export function readFelled(
  form: FelledForm,
  { diameter, distance, volume: cubic }: LocalUnits,
): { readonly tree?: FelledMeasures; readonly problems: FelledProblems } {
  const [dbh, height, volume] = [numberIn(form.dbh), numberIn(form.height), numberIn(form.volume)];
  const thick = within(DBH, diameter === "cm" ? CM_PER_INCH : 1);
  const tall = within(HEIGHT, distance === "m" ? M_PER_FOOT : 1);
  const problems: FelledProblems = {
    ...(!(dbh >= thick.least && dbh <= thick.most) && { dbh: `Type a DBH from ${thick.said} ${diameter}.` }),
    ...(!(height >= tall.least && height <= tall.most) && { height: `Type a height from ${tall.said} ${distance}.` }),
    ...(!(volume > 0 && volume <= MOST_WOOD) && {
      volume: `Type the wood of its stem, above 0 and up to 10,000 ${cubic}.`,
    }),
  };
  return Object.keys(problems).length > 0 ? { problems } : { tree: { dbh, height, volume }, problems };
}

function within({ least, most }: { readonly least: number; readonly most: number }, perOurs: number) {
  const [low, high] = [Math.ceil(least * perOurs), Math.floor(most * perOurs)];
  return { least: low, most: high, said: `${low} to ${high}` };
}

const numberIn = (typed: string) => (typed.trim() === "" ? NaN : Number(typed));
