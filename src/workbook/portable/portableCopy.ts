import { NAMESPACE } from "../../functions/names";
import { zoneAt } from "../address";
import { HostProblem, type CopiedSheet } from "../host";
import { named } from "../tables";
import { base64Of } from "./base64";
import { columnWidths } from "./columnWidths";
import { errorCells, type ErrorCell } from "./errorCells";
import { METHODS, methodsSheet } from "./methodsSheet";
import type { PortableSheet } from "./portableSheet";
import { withoutPrivate } from "./privateCells";
import { formulasInXlsx, writeXlsxFile } from "./xlsxFile";

/** A copy that is planned but not yet made: what it will hold, and what speaks against it. */
export interface PortablePlan {
  readonly sheets: readonly PortableSheet[];
  readonly fileName: string;
  /** Formulas of the add-in that become values. */
  readonly formulas: number;
  /** Cells that show an error and would do so for ever in the copy. */
  readonly errors: readonly ErrorCell[];
}

/** Values in place of formulas, and a sheet that tells how they were made. */
export function planPortable(copied: readonly CopiedSheet[], leaveOutPrivate: boolean): PortablePlan {
  const shared = leaveOutPrivate ? withoutPrivate(copied) : copied;
  const filled = shared.filter(({ cells, name }) => cells.length > 0 && name !== METHODS);
  const made = filled.flatMap(({ cells }) => cells.flat()).filter(({ formula }) => formula?.includes(`${NAMESPACE}.`));
  return {
    sheets: [...filled.map(valuesOf), methodsSheet(filled)],
    fileName: `${fileName(filled)} - values only.xlsx`,
    formulas: made.length,
    errors: errorCells(filled),
  };
}

/**
 * Makes the file, in base64, and proves before handing it over that no formula is left in it.
 * @param withErrors true when the user has seen the cells that show errors and wants the copy all the same
 * @throws HostProblem when cells show errors, or the file did not come out as values only
 */
export async function makePortable(plan: PortablePlan, withErrors = false): Promise<string> {
  const [first] = plan.errors;
  if (first && !withErrors) {
    const others = plan.errors.length - 1;
    const rest = others === 0 ? "" : ` And ${others} more ${others === 1 ? "cell shows" : "cells show"} an error.`;
    throw new HostProblem("refused", `${first.sheet} ${first.at} shows ${first.error}. ${first.says}${rest}`);
  }
  const file = await writeXlsxFile(plan.sheets);
  const left = await formulasInXlsx(file);
  if (left.length > 0) {
    throw new HostProblem(
      "refused",
      `The copy was not made: ${left.length} formulas would be left in it, such as ${left[0]}.`,
    );
  }
  return base64Of(file);
}

function valuesOf(sheet: CopiedSheet): PortableSheet {
  const tables = sheet.tables.map(({ name, address }) => {
    const { row, column, columns } = zoneAt(address);
    const headings = sheet.cells[row]?.slice(column, column + columns).map(({ value }) => String(value ?? "")) ?? [];
    return { name, address, headings };
  });
  const zones = tables.map(({ address }) => zoneAt(address));
  const isHeading = (r: number, c: number) =>
    zones.some(({ row, column, columns }) => r === row && c >= column && c < column + columns);
  return {
    name: sheet.name,
    cells: sheet.cells.map((row, r) =>
      row.map(({ value, format }, c) => ({ value, format, ...((r === 0 || isHeading(r, c)) && { bold: true }) })),
    ),
    widths: columnWidths(sheet),
    tables,
    names: sheet.names ?? [],
    ...(sheet.page && { page: sheet.page }),
  };
}

/** The stand's name as far as a file may be called so. */
function fileName(sheets: readonly CopiedSheet[]): string {
  const sheet = sheets.find(({ names }) => names?.some(({ name }) => name === named.stand));
  const at = sheet?.names?.find(({ name }) => name === named.stand)?.at;
  const place = at === undefined ? undefined : zoneAt(at);
  const stand = place && sheet?.cells[place.row]?.[place.column]?.value;
  const plain = String(stand ?? "")
    .replace(/[^\p{L}\p{N} ._-]/gu, "")
    .trim();
  return plain === "" ? "Woodlot" : plain;
}
