import { splitTaper } from "../../core/sawing/lyingLog";
import type { Mill } from "../../core/sawing/millLimits";
import type { WorkbookHost } from "../../workbook/host";
import type { CellValue } from "../../workbook/plan";
import { BOARD_SIZES, MILL, MORE_PRODUCTS, named, out } from "../../workbook/tables";
import { arePriced, boardsWanted } from "../sawing/boardsWanted";
import { saysTrial } from "../sawing/putTrial";
import { endViewOf, type EndView } from "../sawing/endView";
import { stepsOf, type SawStep } from "../sawing/sawSteps";
import { millFrom } from "../solver/readMill";
import { number, text } from "./cells";
import { readAnswer, type Spill } from "./spill";

/** What the sheet Sawing says of the log that is picked there. */
export interface SawingAnswers {
  /** Its number, as text. */
  readonly log: string;
  readonly pattern: string;
  readonly kerf: number | null;
  readonly taper: string;
  /** null or 0 for a straight log. */
  readonly sweep: number | null;
  /** Of diameters, boards and settings: in or cm. */
  readonly unit: string;
  readonly steps: readonly SawStep[];
  /** Rows of the cut list on the sheet, its heading among them; null where it shows an error or nothing. */
  readonly cutRows: number | null;
  /** Why there are no steps; "" when there are. */
  readonly lacking: string;
  readonly endView: EndView;
  readonly gained: SawGain | undefined;
  readonly bound: SawBound | undefined;
  /** What another kerf or one product more would make of it, with headings; empty where the sheet has none. */
  readonly whatIf: readonly (readonly CellValue[])[];
  /** The boards that the plan may saw, with headings. */
  readonly boards: readonly (readonly CellValue[])[];
  readonly priced: boolean;
  /** The limits of the mill, in the units of the sheet. */
  readonly mill: Mill;
  /** How many products are tried beside them. */
  readonly tried: number;
  /** What the plan is worth by grade, with headings. */
  readonly worth: readonly (readonly CellValue[])[];
}

export interface SawGain {
  readonly pieces: number;
  readonly boardFeet: number;
  /** Shares of the log's wood. [%] */
  readonly lumber: number;
  readonly sawdust: number;
  readonly slab: number;
}

/** How good the plan is. */
export interface SawBound {
  /** What no plan could exceed. [bf] */
  readonly most: number;
  /** How much of that the plan gives, of dollars where boards are priced. [%] */
  readonly gives: number;
  /** The step of the settings that were tried, "any" where they may be any. */
  readonly settings: number | string;
  readonly bestOf: string;
}

const words = {
  "#N/A":
    "The sheet Sawing shows #N/A: no board of the list fits this log, or the log does not fit the mill. Select the cell there and open its flag to read which.",
  "#VALUE!":
    "The sheet Sawing shows #VALUE!: the log, the boards, the kerf or the pattern cannot be used as they stand. Select the cell there and open its flag to read why.",
};

/** Reads the sheet Sawing; "none" when the workbook has no such sheet. */
export async function readSawing(host: WorkbookHost): Promise<SawingAnswers | "none"> {
  if (!(await host.hasTable(BOARD_SIZES))) return "none";
  const settings = await host.readNames([
    named.pickedLog,
    named.pattern,
    named.kerf,
    named.taper,
    named.sweep,
    named.units,
  ]);
  const [plan, layout, gain, bound, whatIf, worth] = await Promise.all([
    readAnswer(host, out.sawPlan, words),
    readAnswer(host, out.sawLayout, words),
    readAnswer(host, out.sawYield, words),
    readAnswer(host, out.sawBound, words),
    readAnswer(host, out.sawWhatIf, words),
    readAnswer(host, out.sawValue, words),
  ]);
  const boards = (await host.readTable(BOARD_SIZES)).rows;
  const more = (await host.hasTable(MORE_PRODUCTS)) ? (await host.readTable(MORE_PRODUCTS)).rows : [];
  const steps = stepsOf(rowsOf(plan));
  return {
    log: text(settings[named.pickedLog]),
    pattern: text(settings[named.pattern]),
    kerf: number(settings[named.kerf]),
    taper: text(settings[named.taper]) || splitTaper.title,
    sweep: number(settings[named.sweep]),
    unit: text(settings[named.units]).toLowerCase() === "metric" ? "cm" : "in",
    steps,
    cutRows: plan.kind === "rows" ? plan.rows.length : null,
    lacking: steps.length > 0 ? "" : plan.kind === "none" ? plan.because : text(plan.rows[1]?.[0]),
    endView: endViewOf(rowsOf(layout)),
    gained: gainOf(gain),
    bound: boundOf(bound),
    whatIf: whatIf.kind === "rows" ? whatIf.rows : [],
    boards: boardsWanted(boards),
    priced: arePriced(boards),
    mill: (await host.hasTable(MILL)) ? millFrom((await host.readTable(MILL)).rows) : {},
    tried: more.filter(saysTrial).length,
    worth: worth.kind === "rows" ? worth.rows : [],
  };
}

const rowsOf = (spill: Spill) => (spill.kind === "rows" ? spill.rows.slice(1) : []);

function gainOf(spill: Spill): SawGain | undefined {
  const [pieces, boardFeet, , lumber, sawdust, slab] = (rowsOf(spill)[0] ?? []).map(number);
  if (pieces == null || boardFeet == null || lumber == null || sawdust == null || slab == null) return undefined;
  return { pieces, boardFeet, lumber, sawdust, slab };
}

function boundOf(spill: Spill): SawBound | undefined {
  const [most, , gives, settings, bestOf] = rowsOf(spill)[0] ?? [];
  if (typeof most !== "number" || typeof gives !== "number" || !settings) return undefined;
  return { most, gives, settings: typeof settings === "number" ? settings : text(settings), bestOf: text(bestOf) };
}
