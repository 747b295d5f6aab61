/** One log as it is typed at the box. */
export interface LogLine {
  /** Species code as it stands in the species list, or as typed when the list does not have it. */
  readonly species: string;
  /** Inside bark. [in] */
  readonly smallEnd: number;
  /** From end to end, trim too. [ft] */
  readonly length: number;
  /** Inside bark; null when it was not measured. [in] */
  readonly largeEnd: number | null;
  /** Out of the straight line between the ends; null for a straight log, and left out in drafts of old. [in] */
  readonly sweep: number | null;
  /** For defect, in percent of the gross scale; null when none was given. */
  readonly deduction: number | null;
  readonly note: string;
}

/** A log and its number on the scale sheet. */
export interface NumberedLog {
  readonly name: string;
  readonly log: LogLine;
}
