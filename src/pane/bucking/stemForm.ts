import { short } from "../figures";
import type { BuckingAnswers } from "../job/readBucking";
import { parseFlaws, writeFlaws, type StemFlaw } from "./flawLine";

/** A stem as it is being typed. */
export interface StemForm {
  readonly species: string;
  readonly dbh: string;
  /** Which height was measured: the two are never mixed. */
  readonly road: "height" | "logs";
  readonly measure: string;
  readonly flaws: string;
}

/** A stem that can be put on the sheet. */
export interface TypedStem {
  readonly species: string;
  readonly dbh: number;
  readonly height: number | null;
  readonly logs: number | null;
  readonly flaws: readonly StemFlaw[];
}

export interface StemProblems {
  readonly species?: string;
  readonly dbh?: string;
  readonly measure?: string;
  readonly flaws?: string;
}

/** The form as the sheet has the stem now. */
export const formOf = ({ species, dbh, height, logs, flaws }: BuckingAnswers): StemForm => ({
  species,
  dbh: dbh === null ? "" : short(dbh),
  road: height === null && logs !== null ? "logs" : "height",
  measure: height !== null ? short(height) : logs !== null ? short(logs) : "",
  flaws: writeFlaws(flaws),
});

/** Reads the form; the problems stand beside their boxes. */
export function readStem(form: StemForm): { readonly stem?: TypedStem; readonly problems: StemProblems } {
  const dbh = numberIn(form.dbh);
  const measure = numberIn(form.measure);
  const read = parseFlaws(form.flaws);
  const byHeight = form.road === "height";
  const problems: StemProblems = {
    ...(byHeight && form.species.trim() === "" && { species: "Type a species: a code of yours or a common name." }),
    ...(!(dbh >= 1 && dbh <= 80) && { dbh: "Type a DBH from 1 to 80 in." }),
    ...(byHeight && !(measure >= 5 && measure <= 400) && { measure: "Type a total height from 5 to 400 ft." }),
    ...(!byHeight && !(measure >= 1 && measure <= 4) && { measure: "Type 1 to 4 logs of 16 ft, such as 2.5." }),
    ...("problem" in read && { flaws: read.problem }),
  };
  if (Object.keys(problems).length > 0 || "problem" in read) return { problems };
  const [height, logs] = byHeight ? [measure, null] : [null, measure];
  return { stem: { species: form.species.trim(), dbh, height, logs, flaws: read.flaws }, problems };
}

const numberIn = (typed: string) => (typed.trim() === "" ? NaN : Number(typed));
