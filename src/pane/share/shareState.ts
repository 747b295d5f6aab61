import type { ErrorCell } from "../../workbook/portable/errorCells";

export interface ShareState {
  readonly leaveOutPrivate: boolean;
  /** What came of the last copy; "" before. */
  readonly made: string;
  /** Cells that would show an error in the copy for ever, and so stopped it. */
  readonly errors: readonly ErrorCell[];
}

export const firstShare: ShareState = { leaveOutPrivate: true, made: "", errors: [] };
