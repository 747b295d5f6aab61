/** How a value reached this project. Only what was read in the named place counts as printed. */
export type Standing = "read" | "from memory" | "computed" | "common practice" | "choice of ours";

/** Where a formula, a table or a coefficient comes from. */
export interface Source {
  readonly author: string;
  readonly year: string;
  readonly title: string;
  /** Section, page, table or equation number. */
  readonly where: string;
  readonly url?: string;
  readonly standing: Standing;
}
