import { beside } from "../address";
import { call } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { named, out, STEM_FLAWS } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { LAST_ROW } from "../zones";
import { BUCKING, FLAW_ROWS } from "./buckingCells";
import { flawColumns } from "./flawColumns";
import { cautionLine, down, heading, sheetPlan, title } from "./sheetParts";
import { stemCells } from "./stemCells";
import { stemOrder, stemSpeciesMeant } from "./stemOrder";

const FIRST = 5;
const PLAN_AT = "A17";
const PLAN_COLUMNS = 9;
const FLAWS_AT = "K7";
const HABITS_AT = "O6";
const HABIT_COLUMNS = 5;

/** The best-paying way to cut one stem into what the owner can sell, beside habits of cutting it. */
export function buckingSheet({ stem }: WorkbookContent): SheetPlan {
  const cells = stemCells(stem);
  const at = (i: number) => `B${FIRST + i}`;
  const meant = at(cells.length);
  const order = stemOrder(meant);

  return sheetPlan({
    name: BUCKING,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 3,
    widths: [18, 20, 14, 20, 15, 20, 12, 12, 15, 3],
    blocks: [
      title(BUCKING),
      down("A2", "Note", [
        cautionLine("Felling"),
        "What it is cut into stands on the sheet Products, with prices. A log never reaches into rot, a crook or a break.",
      ]),
      heading("A4", "The stem", PLAN_COLUMNS),
      down(`A${FIRST}`, "Computed", [...cells.map(({ label }) => label), "National code", "Drawn by"]),
      ...cells.map(({ value, format }, i) => down(at(i), "Input", [value], format)),
      down(meant, "Linked", [{ formula: `=${stemSpeciesMeant}` }]),
      down(at(cells.length + 1), "Computed", [{ formula: drawnBy }]),
      down(
        `C${FIRST}`,
        "Unit",
        cells.map(({ unit }) => unit),
      ),
      down(beside(PLAN_AT, -3, 0), "Computed", [{ formula: headline }]),
      heading(beside(PLAN_AT, -1, 0), "The best-paying way to cut it, from the butt up", PLAN_COLUMNS),
      heading(beside(FLAWS_AT, -3, 0), "Rot, crooks and breaks", 3),
      heading(beside(HABITS_AT, -2, 0), "Beside habits of cutting it", HABIT_COLUMNS),
      down(beside(HABITS_AT, -1, 0), "Note", ["Each log of a habit is sold as the product that pays most for it."]),
    ],
    names: cells.map(({ name }, i) => ({ name, at: at(i) })),
    entryRules: cells.flatMap(({ rule }, i) => (rule ? [{ at: at(i), rule }] : [])),
    tables: [
      {
        name: STEM_FLAWS,
        at: FLAWS_AT,
        columns: flawColumns,
        rows: Array.from({ length: Math.max(FLAW_ROWS, stem.flaws.length) }, (_, i) => stem.flaws[i] ?? {}),
      },
    ],
    spills: [
      {
        name: out.buckPlan,
        at: PLAN_AT,
        formula: `=${call("BUCKPLAN", ...order)}`,
        rows: LAST_ROW - 17,
        columns: PLAN_COLUMNS,
        formats: [
          formats.whole,
          formats.hundredth,
          formats.hundredth,
          formats.general,
          formats.tenth,
          formats.hundredth,
          formats.cents,
          formats.hundredth,
          formats.tenth,
        ],
      },
      {
        name: out.buckHabits,
        at: HABITS_AT,
        formula: `=${call("BUCKHABITS", ...order)}`,
        rows: LAST_ROW - 6,
        columns: HABIT_COLUMNS,
        formats: [formats.general, formats.whole, formats.cents, formats.cents, formats.tenth],
      },
    ],
  });
}

const drawnBy =
  `=IF(AND(N(${named.stemHeight})>0,N(${named.stemLogs})>0),"Check: clear the height or the logs",` +
  `IF(N(${named.stemHeight})>0,"total height: national equations",` +
  `IF(N(${named.stemLogs})>0,"logs: form class "&${named.formClass},"")))`;

const cut = (columns: number) => `${beside(PLAN_AT, 1, columns)}:${beside(PLAN_AT, 200, columns)}`;
const others = `${beside(HABITS_AT, 2, 2)}:${beside(HABITS_AT, 300, 2)}`;
const worth = `SUM(${cut(6)})`;

/** What the plan brings, and how far the best of the habits stays behind. */
const headline =
  `=IFERROR(IF(${worth}=0,"",COUNT(${cut(0)})&" logs, "&TEXT(${worth},"$0.00")` +
  `&"; the best habit brings "&TEXT(MAX(${others}),"$0.00")),"")`;
