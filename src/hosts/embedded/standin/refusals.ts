import { ApiError, invalid } from "./apiError";

/** What Excel refuses in names and formulas, and what this page's engine cannot read, refused before it reaches the grid. */

/** https://support.microsoft.com/office/rename-a-worksheet-3f1f7148-ee83-404d-8ef0-9ff99fbad1f9 */
export function refuseSheetName(name: string, existing: readonly string[]): void {
  if (name.trim() === "" || name.length > 31) throw invalid(`A sheet's name needs 1 to 31 characters: "${name}".`);
  if (/[:\\/?*[\]]/.test(name)) throw invalid(`A sheet's name cannot hold any of : \\ / ? * [ ]: "${name}".`);
  if (/^'|'$/.test(name) || name.toLowerCase() === "history") throw invalid(`Excel refuses the sheet name "${name}".`);
  if (has(existing, name)) throw new ApiError("ItemAlreadyExists", `There is a sheet named "${name}" already.`);
}

/** https://support.microsoft.com/office/names-in-formulas-fc2935f9-115d-4bef-a370-3aa8bb4c91f1, which tables follow too. */
export function refuseName(name: string, existing: readonly string[]): void {
  if (name.length > 255 || !/^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u.test(name)) throw invalid(`"${name}" cannot be a name.`);
  if (looksLikeCell(name)) throw invalid(`"${name}" cannot be a name, for it is a cell's address.`);
  if (has(existing, name)) throw new ApiError("ItemAlreadyExists", `There is a name "${name}" already.`);
}

export function refuseHeadings(headings: readonly string[]): void {
  const seen = new Set<string>();
  for (const heading of headings) {
    if (heading.trim() === "") throw invalid("Every column of a table needs a heading.");
    if (seen.has(heading.toLowerCase())) throw invalid(`Two columns of the table are headed "${heading}".`);
    seen.add(heading.toLowerCase());
  }
}

/**
 * Refuses a formula that Excel refuses, and the few forms that Excel reads and this page's engine does not: the spill
 * mark (C1#), the short @ forms, and headings with parentheses.
 */
export function refuseFormula(formula: string, tables: readonly string[]): void {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  const reason = complaint(bare, tables);
  if (reason) throw invalid(`${reason}: ${formula}`);
}

function complaint(bare: string, tables: readonly string[]): string | undefined {
  if (bare.includes("[@") || /(?:^|[=(,+\-*/^&<>\s])@/.test(bare)) return "This page does not read @ in a formula";
  if (/#/.test(bare.replace(/\[#[\w ]+\]/g, "").replace(/#(?:N\/A|NAME\?|[A-Z0-9/]+!)/g, ""))) {
    return "This page does not read the spill mark # in a formula";
  }
  if (bare.includes("_xlfn.")) return "A formula is written without _xlfn.";
  if (/\[[^\]]*\([^\]]*\]/.test(bare)) return "A heading in a formula cannot have parentheses";
  for (const [, table = ""] of bare.matchAll(/([\p{L}_\\][\p{L}\p{N}_.\\]*)\[/gu)) {
    if (!has(tables, table)) return `There is no table named ${table}`;
  }
  return balanced(bare.replace(/\[[^\]]*\]/g, "")) ? undefined : "The formula's parentheses do not match";
}

function balanced(text: string): boolean {
  let open = 0;
  for (const letter of text) {
    if (letter === "(") open += 1;
    if (letter === ")") open -= 1;
    if (open < 0) return false;
  }
  return open === 0;
}

const has = (list: readonly string[], name: string): boolean =>
  list.some((one) => one.toLowerCase() === name.toLowerCase());

/** Addresses reach from A1 to XFD1048576; R, C and R1C1 are addresses of the other kind. */
function looksLikeCell(name: string): boolean {
  if (/^(?:r|c|r\d*c\d*)$/i.test(name)) return true;
  const [, letters, digits] = /^([a-z]{1,3})(\d{1,7})$/i.exec(name) ?? [];
  if (!letters || !digits) return false;
  return letters.toUpperCase().padStart(3) <= "XFD" && Number(digits) >= 1 && Number(digits) <= 1_048_576;
}
