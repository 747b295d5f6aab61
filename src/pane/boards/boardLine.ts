/** One line of boards as it is typed at the box. */
export interface BoardLine {
  /** [in] */
  readonly thickness: number;
  /** [in] */
  readonly width: number;
  /** [ft] */
  readonly length: number;
  readonly pieces: number;
  readonly note: string;
}

/** Boards and the log that they came from; "" when it is not known. */
export interface SawnBoard {
  readonly log: string;
  readonly board: BoardLine;
}
