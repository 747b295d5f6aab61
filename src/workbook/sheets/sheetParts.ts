import { cautions } from "../../core/reference/cautions";
import type { BlockPlan, EntryRule, PlannedCell, PrintPlan, SheetPlan, StyleName } from "../plan";
import { named } from "../tables";

/** A sheet with only what it needs; the rest is empty. */
export const sheetPlan = (parts: Pick<SheetPlan, "name" | "sheetClass"> & Partial<SheetPlan>): SheetPlan => ({
  widths: [],
  frozenRows: 0,
  blocks: [],
  names: [],
  tables: [],
  spills: [],
  entryRules: [],
  landscape: false,
  ...parts,
});

/** What stands after the title of a sheet, and over prices, while figures are invented. */
export const INVENTED = "INVENTED - replace";

/** The sheet's title; while figures are invented it says so. */
export const title = (text: string): BlockPlan => ({
  at: "A1",
  cells: [[{ formula: `=IF(${named.invented}="Yes",${quoted(`${text} - ${INVENTED}`)},${quoted(text)})` }]],
  style: "Title",
});

/** A sheet that is printed as wide as a page, its title, or the heading of its columns, on every one. */
export const onePageWide = (area: string, titleRow = 1): PrintPlan => ({
  area,
  titleRows: [titleRow, titleRow],
  breaks: [],
  gridlines: false,
  margin: 0.5,
});

/** Cells below one another. */
export const down = (at: string, style: StyleName, cells: readonly PlannedCell[], format?: string): BlockPlan => ({
  at,
  cells: cells.map((cell) => [cell]),
  style,
  ...(format !== undefined && { format }),
});

/** Cells side by side. */
export const across = (at: string, style: StyleName, cells: readonly PlannedCell[], format?: string): BlockPlan => ({
  at,
  cells: [cells],
  style,
  ...(format !== undefined && { format }),
});

/** A heading that runs over so many columns. */
export const heading = (at: string, text: PlannedCell, columns: number): BlockPlan =>
  across(at, "Heading", [text, ...new Array<null>(columns - 1).fill(null)]);

/** A text inside a formula. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

export const yesOrNo: EntryRule = {
  kind: "list",
  choices: ["Yes", "No"],
  strict: false,
  message: "Yes, No or blank.",
};

/** A bounded number of the field, which may be odd and right: asked about, never refused. */
export const asked = (low: number, high: number, message: string): EntryRule => ({
  kind: "number",
  low,
  high,
  strict: false,
  message,
});

/** The one line of a caution, beside the numbers that it concerns; its full text stands on Sources and cautions. */
export function cautionLine(topic: string): string {
  const found = cautions.find((caution) => caution.title === topic);
  if (!found) throw new Error(`There is no caution "${topic}".`);
  return found.line;
}
