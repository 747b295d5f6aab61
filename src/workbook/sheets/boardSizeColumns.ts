import { products } from "../../core/sawing/resawn";
import { call, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { board, named } from "../tables";
import { asked } from "./sheetParts";

/** What a list of boards is read by: the columns from the thickness at the saw to the price per MBF. */
export const boardCells = (table: string): string => `${table}[[${board.thickness}]:[${board.price}]]`;

/**
 * Columns of a list of boards: two ways to give the thickness, then what the plans read, in the order in which a list
 * without headings is read.
 */
export const boardSizeColumns = (table: string): readonly ColumnPlan[] => [
  {
    heading: board.finished,
    width: 22,
    format: formats.thickness,
    rule: asked(
      0.25,
      12,
      "Inches, dry and planed; the thickness at the saw is then worked out. Or give that yourself.",
    ),
  },
  {
    heading: board.sawn,
    width: 20,
    format: formats.thickness,
    rule: asked(0.25, 12, "Inches as sawn; 1.25, not 5/4. Goes by the board while its finished thickness is blank."),
  },
  { heading: board.thickness, width: 14, format: formats.thickness, formula: thicknessAtTheSaw(table) },
  { heading: board.width, width: 16, format: formats.thickness },
  { heading: board.length, width: 12, format: formats.tenth, rule: asked(1, 60, "Feet; blank for any length.") },
  {
    heading: board.product,
    width: 16,
    rule: {
      kind: "list",
      choices: products.map(({ title: product }) => product),
      strict: false,
      message: "Blank for a board. Of siding and shingles, give the size of the blank that they are sawn from.",
    },
  },
  {
    heading: board.each,
    width: 16,
    format: formats.cents,
    rule: asked(0, 10_000, "$ a piece; takes the place of the price per MBF."),
  },
  {
    heading: board.price,
    width: 16,
    format: formats.dollars,
    rule: asked(0, 100_000, "$ per MBF; for every board or for none."),
  },
];

/** The target thickness of a board that is told by its finished thickness; else as it is told. */
function thicknessAtTheSaw(table: string): string {
  const [finished, sawn] = [thisRow(table, board.finished), thisRow(table, board.sawn)];
  const target = call("TARGETTHICKNESS", finished, named.shrinkage, named.planing, named.variation, named.units);
  return `=IF(${finished}="",IF(${sawn}="","",${sawn}),${target})`;
}
