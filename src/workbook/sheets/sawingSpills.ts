import { call } from "../formula";
import { formats } from "../formats";
import type { SpillPlan } from "../plan";
import { GRADE_SHARES, gradeShare, MORE_PRODUCTS, named, out, SAW_RATES, sawRate } from "../tables";
import { LAST_ROW } from "../zones";
import { boardCells } from "./boardSizeColumns";
import { boardList, millList } from "./millTables";

/** The row that heads the cut list. */
export const CUTS_AT = 25;

/** Where it is told how good the plan is. */
export const BOUND_AT = "AO5";

const theLog = ["B6:B7", "B8", "B9", boardList, named.kerf, named.pattern] as const;
const lying = [millList, named.sweep, named.taper, named.units] as const;
const order = [...theLog, ...lying] as const;
const gradeList = `${GRADE_SHARES}[[${gradeShare.grade}]:[${gradeShare.price}]]`;
const rateList = `${SAW_RATES}[[${sawRate.rate}]:[${sawRate.value}]]`;

const { general, whole, tenth, thickness, cents } = formats;

/** The answers of the sheet Sawing over the log that is picked there. */
export const sawingSpills: readonly SpillPlan[] = [
  {
    name: out.sawYield,
    at: "A21",
    formula: `=${call("SAWYIELD", ...order)}`,
    rows: 2,
    columns: 6,
    formats: [whole, whole, cents, tenth, tenth, tenth],
  },
  {
    name: out.sawPlan,
    at: `A${CUTS_AT}`,
    formula: `=${call("SAWPLAN", ...order)}`,
    rows: LAST_ROW - CUTS_AT + 1,
    columns: 7,
    formats: [whole, general, thickness, general, tenth, cents, general],
  },
  {
    name: out.sawBound,
    at: BOUND_AT,
    formula: `=${call("SAWBOUND", ...order)}`,
    rows: 2,
    columns: 5,
    formats: [whole, cents, tenth, thickness, general],
  },
  {
    name: out.sawLayout,
    at: "AJ5",
    // The gaps between outlines are #N/A for charts; on a sheet that is read and copied they are blanks. Why there
    // is no plan at all, the cut list says.
    formula: `=IFERROR(${call("SAWLAYOUT", ...order)},"")`,
    rows: LAST_ROW - 4,
    columns: 4,
    formats: [thickness, thickness, general, general],
  },
  {
    name: out.sawWhatIf,
    at: "W5",
    formula: `=${call("SAWWHATIF", ...theLog, boardCells(MORE_PRODUCTS), ...lying)}`,
    rows: 60,
    columns: 6,
    formats: [general, whole, tenth, cents, tenth, cents],
  },
  {
    name: out.sawValue,
    at: "AD5",
    formula: `=${call("SAWVALUE", ...theLog, gradeList, rateList, ...lying)}`,
    rows: 40,
    columns: 5,
    formats: [general, tenth, general, cents, cents],
  },
];
