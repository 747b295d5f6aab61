import { millLimits, type Mill } from "../../core/sawing/millLimits";
import { patternNames } from "../../core/sawing/patternNames";
import type { TableRow } from "../../workbook/plan";
import { mill } from "../../workbook/tables";
import { positive, text } from "../job/cells";

const bare = (name: string) => name.toLowerCase().replace(/[^a-z]/g, "");

/** The limits of the mill as its table has them; a line that names no known limit binds nothing. */
export const millFrom = (rows: readonly TableRow[]): Mill =>
  Object.fromEntries(
    rows.flatMap((row) => {
      const name = bare(text(row[mill.limit]));
      const known = millLimits.find(({ title, aliases = [] }) => [title, ...aliases].some((one) => bare(one) === name));
      const value = positive(row[mill.value]);
      return known && value !== null ? [[known.id, value] as const] : [];
    }),
  );

/** The title of the pattern that is named on the sheet, or that of live sawing. */
export const patternFrom = (name: string): string =>
  patternNames.find(({ title, aliases }) => [title, ...aliases].some((one) => bare(one) === bare(name)))?.title ??
  patternNames[0].title;
