import { BUYERS_CARD } from "../../core/log/scaleCard";
import { addressOf, zoneAt } from "../address";
import { formats } from "../formats";
import type { PlannedCell, SheetPlan } from "../plan";
import { named } from "../tables";
import { CARD_SHEET } from "./logCells";
import { cautionLine, down, quoted, sheetPlan, title } from "./sheetParts";

/** The corner of the card; lengths run to the right of it, diameters below it. */
const CORNER = "A7";
const LENGTHS = 16;
const DIAMETERS = 60;

const zone = { ...zoneAt(CORNER), rows: 1 + DIAMETERS, columns: 1 + LENGTHS };
const figures = { row: zone.row + 1, column: zone.column + 1, rows: DIAMETERS, columns: LENGTHS };

/** The buyer's card as a formula of any sheet reads it. */
export const cardRange = `${CARD_SHEET}!${addressOf(zone).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;

/** Room for a buyer's own printed table, by which the sheet Logs scales when it is named there as the rule. */
export function cardSheet(): SheetPlan {
  const blank = (columns: number) => new Array<PlannedCell>(columns).fill(null);
  return sheetPlan({
    name: CARD_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: zone.row + 1,
    widths: [36, ...new Array<number>(LENGTHS).fill(9)],
    blocks: [
      title(CARD_SHEET),
      down("A2", "Computed", [{ formula: inUse() }]),
      down("A3", "Note", [
        cautionLine("Estimate"),
        "Type or paste the buyer's own table: lengths in feet from B7 to the right, diameters in inches from A8 down, board feet between them. Leave blank what it does not print.",
        "A diameter is read at the nearest row, half way between two at the lower one; a length at the next lower column. Nothing is read outside the table.",
      ]),
      { at: CORNER, cells: [["Diameter in, by length in ft"]], style: "Heading" },
      { at: "B7", cells: [blank(LENGTHS)], style: "Input", format: formats.general },
      {
        at: "A8",
        cells: new Array<readonly PlannedCell[]>(DIAMETERS).fill(blank(1 + LENGTHS)),
        style: "Input",
        format: formats.general,
      },
    ],
  });
}

/** Whether the card is there, and whether the scale sheet goes by it. */
function inUse(): string {
  const count = `COUNT(${addressOf(figures)})`;
  return `=IF(${count}=0,"No card yet.",${count}&" figures.")&IF(${named.scaleRule}=${quoted(BUYERS_CARD)}," The sheet Logs scales by this card."," To scale by this card, choose ${BUYERS_CARD} as the rule on the sheet Logs.")`;
}
