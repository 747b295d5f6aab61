import type { TallyTree } from "./tallyTree";

/** A tree as the line one would type for it, so that it can be put back into the tally box. */
export function writeTallyLine({ species, dbh, logs, count, cull, note }: TallyTree): string {
  return [
    species,
    String(dbh),
    logs === null ? "" : String(logs),
    count === 1 ? "" : `x${count}`,
    cull === null ? "" : `c${cull}`,
    note === "" ? "" : `/${note}`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}
