/** One published table held against our own figures, for the accuracy report. */
export interface Comparison {
  /** What is compared, such as "Doyle log rule". */
  readonly subject: string;
  readonly source: string;
  /** "read", "from memory" or "computed". */
  readonly standing: string;
  readonly unit: string;
  readonly printedTo: number;
  readonly pairs: readonly { readonly printed: number; readonly ours: number }[];
}
