import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { CUT_LIST, named, wanted } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { CUT_GOALS, CUT_LIST_SHEET } from "./cutListCells";
import { asked, cautionLine, down, sheetPlan, title } from "./sheetParts";

const HEADINGS = 11;

/** The pieces of a building; which logs or trees give them is found in the pane and written to a sheet of its own. */
export function cutListSheet({ cutList }: WorkbookContent): SheetPlan {
  const here = (heading: string) => thisRow(CUT_LIST, heading);
  const measures = [wanted.thickness, wanted.width, wanted.length, wanted.count];
  const missing = `OR(${measures.map((heading) => `${here(heading)}=""`).join(",")})`;
  return sheetPlan({
    name: CUT_LIST_SHEET,
    sheetClass: "foundation",
    frozenRows: HEADINGS,
    printTitleRow: HEADINGS,
    widths: [26, 14, 12, 12, 16, 14, 52],
    blocks: [
      title(CUT_LIST_SHEET),
      down("A2", "Computed", [
        {
          formula: `=SUM(${column(CUT_LIST, wanted.count)})&" pieces, "&FIXED(SUM(${column(CUT_LIST, wanted.boardFeet)}),0)&" board feet"`,
        },
      ]),
      down("A3", "Note", [cautionLine("Ungraded lumber"), cautionLine("Sawing")]),
      down("A5", "Note", [
        "Sizes as they come off the saw, rough and green.",
        "Logs come from the sheet Logs, those marked Sell left out; kerf and mill as on Setup and Mill.",
        "The pane, view Cut list, finds which logs or how many of your trees give the pieces, and writes the plan to a sheet of its own.",
      ]),
      down("A8", "Computed", ["Spare pieces, percent"]),
      down("D8", "Computed", ["Goal"]),
      down("B8", "Input", [10], formats.whole),
      down("E8", "Input", [CUT_GOALS[0]]),
    ],
    names: [
      { name: named.spares, at: "B8" },
      { name: named.cutGoal, at: "E8" },
    ],
    entryRules: [
      {
        at: "B8",
        rule: asked(
          0,
          100,
          "Percent to saw besides of every piece, to the nearest whole one, for boards that fail; 10 for 10 percent.",
        ),
      },
      {
        at: "E8",
        rule: {
          kind: "list",
          choices: CUT_GOALS,
          strict: true,
          message: "What to go by when the whole list can be had.",
        },
      },
    ],
    tables: [
      {
        name: CUT_LIST,
        at: `A${HEADINGS}`,
        columns: [
          { heading: wanted.piece, width: 26 },
          {
            heading: wanted.thickness,
            width: 14,
            format: formats.thickness,
            rule: asked(0.25, 24, "Inches as sawn; 1.25, not 5/4."),
          },
          { heading: wanted.width, width: 12, format: formats.thickness, rule: asked(1, 40, "Inches as sawn.") },
          { heading: wanted.length, width: 12, format: formats.hundredth, rule: asked(1, 60, "Feet.") },
          {
            heading: wanted.count,
            width: 16,
            format: formats.whole,
            rule: asked(1, 10_000, "A whole number of pieces."),
          },
          {
            heading: wanted.boardFeet,
            width: 14,
            format: formats.tenth,
            formula: `=IF(${missing},"",${call("BOARDFEET", here(wanted.thickness), here(wanted.width), here(wanted.length), here(wanted.count), named.units)})`,
          },
          {
            heading: wanted.check,
            width: 52,
            formula: `=IF(AND(${here(wanted.piece)}="",${here(wanted.thickness)}=""),"",IF(${missing},"Thickness, width, length and count are needed.",IF(${here(wanted.count)}<>INT(${here(wanted.count)}),"The count should be a whole number.",IF(${here(wanted.thickness)}>${here(wanted.width)},"Thicker than wide. Swapped?",""))))`,
          },
        ],
        rows: cutList,
      },
    ],
  });
}
