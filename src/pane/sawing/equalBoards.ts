import { Problem } from "../../core/basis/problem";
import { inches } from "../../core/basis/units";
import { headSettings, type HeadSetting } from "../../core/sawing/headSettings";
import { onTheScale } from "../../core/sawing/scale";
import { takeNumber } from "../entry/lineWords";
import type { SawingAnswers } from "../job/readSawing";

/** A stack of like boards, as it is being typed. */
export interface EqualBoardsForm {
  readonly start: string;
  readonly thickness: string;
  readonly boards: string;
}

export const firstEqualBoards: EqualBoardsForm = { start: "", thickness: "", boards: "" };

/** Where the head is set, what is still to be typed, or why there are no settings. */
export type EqualBoards =
  | { readonly kind: "waiting" }
  | { readonly kind: "problem"; readonly because: string }
  | {
      readonly kind: "settings";
      /** How many boards, and how thick they come out. */
      readonly boards: string;
      readonly onBed: string;
      /** Head reading of each cut. */
      readonly cuts: readonly string[];
    };

/** More boards than any stack has; a longer list is a slip. */
const MOST_BOARDS = 100;

/** The settings for a stack, by the kerf and the mill that the plans go by. */
export function equalBoardsOf(
  form: EqualBoardsForm,
  { kerf, mill, unit }: Pick<SawingAnswers, "kerf" | "mill" | "unit">,
): EqualBoards {
  if (Object.values(form).some((typed: string) => typed.trim() === "")) return { kind: "waiting" };
  const [start, thickness, pieces] = [form.start, form.thickness, form.boards].map(numberIn);
  if (!start) return problem(`Type the blade's height at the opening cut in ${words(unit)}, like 12 or 12 7/16.`);
  if (!thickness) return problem(`Type the thickness in ${words(unit)}, like 1 1/8 or 1.125.`);
  if (!pieces || !Number.isInteger(pieces) || pieces > MOST_BOARDS)
    return problem(`Type how many boards as a whole number from 1 to ${MOST_BOARDS}.`);
  if (kerf === null) return problem("The kerf is missing on Setup.");
  const { scaleStep, bladeAboveBed } = mill;
  try {
    const settings = headSettings({
      start: inches(start),
      thickness: inches(thickness),
      kerf: inches(kerf),
      pieces,
      scaleStep,
      bladeAboveBed,
    });
    const set = (reading: number) => settingIn(reading, scaleStep, unit);
    return {
      kind: "settings",
      boards: boardsIn(settings, unit),
      onBed: set(settings.at(-1)?.reading ?? 0),
      cuts: settings.map(({ reading }) => set(reading)),
    };
  } catch (thrown) {
    if (thrown instanceof Problem) return problem(unit === "in" ? thrown.message : thrown.messageIn(as(unit)));
    throw thrown;
  }
}

const problem = (because: string): EqualBoards => ({ kind: "problem", because });

/** 12.5, 12 1/2 or 1/2; undefined for anything else. */
function numberIn(typed: string): number | undefined {
  const parts = typed.trim().split(/\s+/);
  const value = takeNumber(parts);
  return parts.length === 0 ? value : undefined;
}

const words = (unit: string) => (unit === "in" ? "inches" : unit);

/** The measures are in the unit of the sheet already. */
const as = (unit: string) => ({ number: short, unit: () => unit });

const short = (value: number) => String(Number(value.toFixed(3)));

function settingIn(reading: number, step: number | undefined, unit: string): string {
  if (step === undefined) return `${short(reading)} ${unit}`;
  const shown = onTheScale(reading, step);
  return shown.endsWith("marks") ? shown : `${shown} ${unit}`;
}

function boardsIn(settings: readonly HeadSetting[], unit: string): string {
  const thicknesses = settings.map(({ thickness }) => short(thickness));
  const [least = "", most = ""] = [Math.min(...thicknesses.map(Number)), Math.max(...thicknesses.map(Number))].map(
    short,
  );
  const thick = least === most ? `${least} ${unit} thick` : `${least} to ${most} ${unit} thick`;
  return settings.length === 1 ? `1 board, ${thick}` : `${settings.length} boards, ${thick}`;
}
