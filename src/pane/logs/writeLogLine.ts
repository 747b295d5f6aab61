import type { LogLine } from "./logLine";

/** A log as the line one would type for it, so that it can be put back into the box. */
export function writeLogLine({ species, smallEnd, length, largeEnd, sweep, deduction, note }: LogLine): string {
  return [
    species,
    String(smallEnd),
    String(length),
    largeEnd === null ? "" : String(largeEnd),
    sweep == null ? "" : `s${sweep}`,
    deduction === null ? "" : `d${deduction}`,
    note === "" ? "" : `/${note}`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}
