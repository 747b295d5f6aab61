import { HostProblem } from "../../workbook/host";

/** The code that Office.js puts on its errors; undefined for any other error. */
export function apiCode(problem: unknown): string | undefined {
  const code: unknown = typeof problem === "object" && problem !== null && "code" in problem ? problem.code : undefined;
  return typeof code === "string" ? code : undefined;
}

/**
 * What Excel could not do, in words. An error without a code of Office.js is a bug of ours and passes through.
 * Codes: https://learn.microsoft.com/office/dev/add-ins/testing/application-specific-api-error-handling
 */
export function asHostProblem(problem: unknown): unknown {
  const code = apiCode(problem);
  if (problem instanceof HostProblem || code === undefined) return problem;
  if (code === "InvalidOperationInCellEditMode" || code === "Busy") return busy();
  if (code === "AccessDenied") {
    return new HostProblem("refused", "The sheet is protected. Unprotect it on the Review tab, then try again.");
  }
  if (code === "ItemAlreadyExists") {
    return new HostProblem(
      "refused",
      "Something in this workbook already has the name of a new sheet, table or cell. Open a new workbook, then try again.",
    );
  }
  const { message: said = "" } = problem as { readonly message?: string };
  return new HostProblem("refused", `The spreadsheet could not do this (${code}). ${said}`.trim());
}

export const busy = () =>
  new HostProblem("busy", "Excel is busy with a cell. Press Esc or Enter in the sheet, then try again.");

export const missingTable = (name: string) =>
  new HostProblem(
    "missing table",
    `The table named ${name} is missing. Build a new one on the Setup view; your data has not been changed.`,
  );

export const missingName = (name: string) =>
  new HostProblem(
    "missing name",
    `The cell named ${name} is missing. Build the workbook anew on the Setup view; your data has not been changed.`,
  );

export const missingColumn = (table: string, heading: string) =>
  new HostProblem(
    "refused",
    `The table named ${table} has no column "${heading}". Write that heading over its column again.`,
  );

export const missingRow = (table: string, row: number) =>
  new HostProblem(
    "refused",
    `The table named ${table} has no row ${row + 1} any more. Look at the sheet, then try again.`,
  );
