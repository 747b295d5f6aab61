import { chosen } from "../../core/basis/choices";
import { Problem } from "../../core/basis/problem";
import { feet, inches, percent } from "../../core/basis/units";
import { biltmoreMark } from "../../core/tree/biltmoreMark";
import { dbhFromGirth } from "../../core/tree/dbhFromGirth";
import { formClass } from "../../core/tree/formClass";
import { heightScales } from "../../core/tree/heightScales";
import { insideBark } from "../../core/tree/insideBark";
import { logsFromHeight } from "../../core/tree/logsFromHeight";
import { treeHeight } from "../../core/tree/treeHeight";
import type { KnownSpecies } from "../tally/tallyTree";
import type { MeasureForm } from "./measureState";

/** A figure, what is still to be typed, or why there is none. */
export type Measured =
  | { readonly kind: "figure"; readonly value: number }
  | { readonly kind: "waiting" }
  | { readonly kind: "problem"; readonly because: string };

/** The tables' own allowance for trim, and half logs. [ft] */
const LOG = { logLength: feet(16), trim: feet(0.3), step: 0.5 };
/** Diameters that are marked on a stick. [in] */
const MARKS = Array.from({ length: 16 }, (_, i) => 6 + 2 * i);

const waiting: Measured = { kind: "waiting" };

/** Works with the numbers of boxes; a blank waits, a word or a number that will not do says so. */
function withNumbers(typed: readonly string[], work: (numbers: readonly number[]) => number): Measured {
  if (typed.some((text) => text.trim() === "")) return waiting;
  const numbers = typed.map((text) => Number(text.replace(/%$/, "")));
  const odd = numbers.findIndex((value) => !Number.isFinite(value));
  if (odd >= 0) return { kind: "problem", because: `"${typed[odd]}" is not a number.` };
  try {
    return { kind: "figure", value: work(numbers) };
  } catch (problem) {
    if (problem instanceof Problem) return { kind: "problem", because: problem.message };
    throw problem;
  }
}

/** Height between the two marks sighted. [ft] */
export const heightOf = ({ distance, top, base, scale, slope }: MeasureForm): Measured =>
  withNumbers([distance, top, base, slope.trim() === "" ? "0" : slope], ([away = 0, up = 0, down = 0, steep = 0]) =>
    treeHeight({
      distance: feet(away),
      top: up,
      base: down,
      scale: chosen("Scale", scale, heightScales),
      slope: percent(steep),
    }),
  );

/** 16-ft logs in a height, to the half. */
export const logsIn = (height: number): number => logsFromHeight({ height: feet(height), ...LOG });

export const dbhOf = ({ girth }: MeasureForm): Measured =>
  withNumbers([girth], ([around = 0]) => dbhFromGirth(inches(around)));

/** The ratio that is used: as typed, or that of the species. */
export function ratioOf({ ratio, species }: MeasureForm, list: readonly KnownSpecies[]): string {
  if (ratio.trim() !== "") return ratio;
  const listed = list.find(({ code }) => code === species)?.barkRatio;
  return listed === undefined ? "" : String(Number(listed.toFixed(3)));
}

export const insideOf = (form: MeasureForm, list: readonly KnownSpecies[]): Measured =>
  withNumbers([form.outside, ratioOf(form, list)], ([outside = 0, ratio = 0]) => insideBark(inches(outside), ratio));

export const formClassOf = ({ inside, dbh }: MeasureForm): Measured =>
  withNumbers([inside, dbh], ([top = 0, breast = 0]) => formClass(inches(top), inches(breast)));

/** Where each diameter is marked on the stick; the first mark tells what is wrong when none can be made. */
export function stickMarks({ reach }: MeasureForm): readonly (readonly [dbh: number, mark: Measured])[] {
  return MARKS.map((dbh) => [dbh, withNumbers([reach], ([away = 0]) => biltmoreMark(inches(dbh), inches(away)))]);
}
