import { call } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { log, named, out } from "../tables";
import { buttOf, ofPickedLog } from "./logCells";
import { cautionLine, down, heading, quoted, sheetPlan, title } from "./sheetParts";

export const WORKING_SHEET = "Working";
/** Steps of the longest way: each segment of a long log has a dozen. */
const ROOM = 200;

/** How the net scale of the picked log came about, step by step, so that it can be done again by hand. */
export function workingSheet(): SheetPlan {
  const measures = [log.smallEnd, log.second, log.scalingDiameter, log.length, log.scalingLength, log.deduction];
  return sheetPlan({
    name: WORKING_SHEET,
    sheetClass: "presentation",
    widths: [44, 56, 16, 10],
    frozenRows: 3,
    blocks: [
      title(WORKING_SHEET),
      down("A2", "Note", [cautionLine("Estimate")]),
      heading(
        "A4",
        {
          formula: `="Net scale of log "&${named.pickedLog}&" by "&${named.scaleRule}&"; the log is picked on the sheet Sawing"`,
        },
        4,
      ),
      down("A5", "Computed", [...measures]),
      down(
        "B5",
        "Linked",
        measures.map((heading) => ({ formula: `=${ofPickedLog(heading)}` })),
        formats.hundredth,
      ),
    ],
    spills: [
      {
        name: out.working,
        at: "A12",
        formula: `=IF(${named.pickedLog}="","",${call(
          "WORKING",
          quoted("LOGSCALE"),
          "B7",
          "B9",
          named.scaleRule,
          "B10",
          named.scaleRounding,
          named.longestLength,
          `IF(${ofPickedLog(log.largeEnd)}="","",${buttOf(ofPickedLog(log.largeEnd), "B7")})`,
          named.diameterRounding,
          named.units,
        )})`,
        rows: ROOM,
        columns: 4,
        formats: [formats.text, formats.general, formats.general, formats.general],
      },
    ],
  });
}
