import type { KnownSpecies } from "../tally/tallyTree";
import type { LogLine } from "./logLine";

/** A log in words, as it will be saved: "white oak, 14 in, 16 ft, 5 % off". */
export function sayLog(log: LogLine, species: readonly KnownSpecies[]): string {
  const known = species.find(({ code }) => code.toLowerCase() === log.species.toLowerCase());
  return [
    known && known.name !== "" ? known.name : log.species,
    `${log.smallEnd} in`,
    `${log.length} ft`,
    log.largeEnd === null ? "" : `large end ${log.largeEnd} in`,
    log.sweep == null ? "" : `${log.sweep} in of sweep`,
    log.deduction === null ? "" : `${log.deduction} % off`,
    log.note === "" ? "" : `note: ${log.note}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}
