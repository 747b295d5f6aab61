/** A line of a pasted text, counted from 1, and what is said of it. */
export interface LineNote {
  readonly line: number;
  readonly text: string;
  readonly says: string;
}
