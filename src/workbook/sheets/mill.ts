import { formats } from "../formats";
import type { EntryRule, SheetPlan } from "../plan";
import { named } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { boardsTable, gradesTable, limitsTable, ratesTable } from "./millTables";
import { asked, cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const MILL_SHEET = "Mill";
const LOSSES_AT = 5;
const BOARDS_AT = 12; // a table's tab is higher than one row

/** The boards that are wanted and what they lose on the way, what the mill can take, and what its lumber is worth. */
export function millSheet(content: WorkbookContent): SheetPlan {
  const losses = lossesOf(content);
  const cell = (i: number) => `B${LOSSES_AT + i}`;
  return sheetPlan({
    name: MILL_SHEET,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 3,
    blocks: [
      title(MILL_SHEET),
      down("A2", "Note", [
        cautionLine("Sawing"),
        "Logs, trees and cut lists are all planned for these boards and this mill; the kerf stands on Setup.",
      ]),
      heading("A4", "From the finished board back to the saw", 8),
      down(
        `A${LOSSES_AT}`,
        "Computed",
        losses.map(({ label }) => label),
      ),
      ...losses.map(({ value, format }, i) => down(cell(i), "Input", [value], format)),
      down(
        `C${LOSSES_AT}`,
        "Unit",
        losses.map(({ unit }) => unit),
      ),
      down(
        `D${LOSSES_AT}`,
        "Note",
        losses.map(({ comment }) => comment),
      ),
      heading("A9", "Boards you want: thickness finished or sawn, width as it comes off the saw", 8),
      heading("J4", "What the mill can take", 4),
      heading("O4", "Grades you expect", 3),
      heading("S4", "Slabs, sawdust, hours", 3),
    ],
    names: losses.map(({ name }, i) => ({ name, at: cell(i) })),
    entryRules: losses.map(({ rule }, i) => ({ at: cell(i), rule })),
    tables: [boardsTable(`A${BOARDS_AT}`, content), limitsTable("J7", content), gradesTable("O7"), ratesTable("S7")],
  });
}

interface Loss {
  readonly name: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly comment: string;
  readonly rule: EntryRule;
  readonly format: string;
}

const lossesOf = ({ settings: { losses } }: WorkbookContent): readonly Loss[] => [
  {
    name: named.shrinkage,
    label: "Shrinks in thickness",
    value: losses.shrinkage,
    unit: "pct",
    comment:
      "From green to the moisture it is used at; 5 for 5 percent. DRIEDSIZE tells it of a species. 0 if used green.",
    rule: asked(0, 50, "A percent from 0 to 50; 5 for 5 percent."),
    format: formats.tenth,
  },
  {
    name: named.planing,
    label: "Planed off",
    value: losses.planing,
    unit: "in",
    comment: "Both faces together; 0 if it is left rough.",
    rule: asked(0, 2, "Inches, both faces together, from 0 to 2."),
    format: formats.thickness,
  },
  {
    name: named.variation,
    label: "Uneven sawing",
    value: losses.variation,
    unit: "in",
    comment: "1.65 times the standard deviation of your boards' thickness leaves 5 percent with a thin spot.",
    rule: asked(0, 2, "Inches, from 0 to 2."),
    format: formats.thickness,
  },
];
