export const BUCKING = "Bucking";

/** Rows for flaws that are there from the start, so that the pane need not add any. */
export const FLAW_ROWS = 8;
