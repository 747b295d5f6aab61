import { feet } from "../../../src/core/basis/units";
import type { DefectExtent } from "../../../src/core/log/defects/defectKind";
import { numberIn, type PublishedRow } from "../../support/published";

/** How far the defect of a printed row reaches; what its kind does not ask for is blank there. */
export function defectOf(row: PublishedRow): DefectExtent {
  return {
    ...(row["affectedLength"] && { affectedLength: feet(numberIn(row, "affectedLength")) }),
    ...(row["size"] && { size: numberIn(row, "size") }),
    ...(row["width"] && { width: numberIn(row, "width") }),
  };
}
