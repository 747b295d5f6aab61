/** One activity of a linear programme: what it costs, and what it puts into which rows. */
export interface Column {
  readonly cost: number;
  readonly entries: readonly (readonly [row: number, amount: number])[];
  /** Left out: as much as one likes. */
  readonly most?: number;
}

export interface Row {
  readonly low: number;
  readonly high: number;
}

export interface LinearAnswer {
  readonly cost: number;
  readonly amounts: ArrayLike<number>;
  /** What one unit more of a row's bound would cost. */
  readonly rowPrices: ArrayLike<number>;
}

/** A linear programme of least cost that columns are added to; who solves it, the core does not know. */
export interface LinearProgram {
  add(columns: readonly Column[]): void;
  /** Asks for so much of a column from now on; 0 takes that back. */
  atLeast(column: number, amount: number): void;
  /** With amounts that may be broken. */
  solve(): LinearAnswer;
  /** With whole amounts in every column, after so many branches at most; undefined when none was found. */
  solveWhole(branches: number): ArrayLike<number> | undefined;
  close(): void;
}

export type NewLinearProgram = (rows: readonly Row[]) => LinearProgram;
