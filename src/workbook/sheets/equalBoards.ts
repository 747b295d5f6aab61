import { beside } from "../address";
import { call } from "../formula";
import { formats } from "../formats";
import type { BlockPlan, EntryRulePlan, SpillPlan } from "../plan";
import { named, out } from "../tables";
import type { EqualBoardsContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { millList } from "./millTables";
import { asked, down, heading } from "./sheetParts";

export const EQUAL_BOARDS_AT = "I4";
/** Widths of its columns. */
export const EQUAL_BOARDS_WIDTHS = [30, 17, 18, 20] as const;

const cell = (rows: number, columns: number) => beside(EQUAL_BOARDS_AT, rows, columns);
const [start, thickness, pieces] = [cell(1, 1), cell(2, 1), cell(3, 1)];
const SETTINGS_DOWN = 8;

const settings = call("HEADSETTINGS", start, thickness, named.kerf, pieces, millList, named.units);
const unlessBlank = (formula: string) => `=IF(OR(${start}="",${thickness}="",${pieces}=""),"",${formula})`;

/** Settings for a stack of like boards, from whatever face was opened: no log is asked for. */
export const equalBoardsBlocks = (stack: EqualBoardsContent | undefined): readonly BlockPlan[] => [
  heading(EQUAL_BOARDS_AT, "Saw a stack of equal boards", EQUAL_BOARDS_WIDTHS.length),
  down(cell(1, 0), "Computed", [
    "Blade at the opening cut",
    "Board thickness wanted",
    "Number of boards",
    "Left on the bed",
  ]),
  down(start, "Input", [stack?.start ?? null, stack?.thickness ?? null], formats.thickness),
  down(pieces, "Input", [stack?.boards ?? null], formats.whole),
  down(
    cell(4, 1),
    "Computed",
    [{ formula: unlessBlank(`IFERROR(INDEX(${settings},${pieces}+1,2),"")`) }],
    formats.thickness,
  ),
  down(cell(1, 2), "Unit", ["in above the bed", "in, as it leaves the saw", null, "in, after the last cut"]),
  down(cell(5, 0), "Note", [
    "The kerf is as on Setup, scale step and lowest blade as on Mill.",
    "On the marks of a scale no board comes out thinner than wanted.",
  ]),
];

export const equalBoardsRules: readonly EntryRulePlan[] = [
  { at: start, rule: asked(0.25, 60, "Inches above the bed, from 0.25 to 60.") },
  { at: thickness, rule: asked(0.25, 24, "Inches as sawn, from 0.25 to 24; 1.25, not 5/4.") },
  { at: pieces, rule: asked(1, 100, "A whole number of boards, from 1 to 100.") },
];

export const equalBoardsSpill: SpillPlan = {
  name: out.headSettings,
  at: cell(SETTINGS_DOWN, 0),
  formula: unlessBlank(settings),
  rows: LAST_ROW - 4 - SETTINGS_DOWN,
  columns: EQUAL_BOARDS_WIDTHS.length,
  formats: [formats.whole, formats.thickness, formats.general, formats.thickness],
};
