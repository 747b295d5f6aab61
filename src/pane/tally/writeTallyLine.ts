import type { TallyTree } from "./tallyTree";

/**
 * A tree as the line one would type for it, so that it can be put back into the tally box.
 *
 * @param heightIs what a bare number behind the DBH means there
 */
export function writeTallyLine(
  { species, dbh, logs, height, count, cull, distance, note }: TallyTree,
  heightIs: "logs" | "feet" = "logs",
): string {
  return [
    species,
    String(dbh),
    logs === null ? "" : heightIs === "logs" ? String(logs) : `${logs}logs`,
    height === null ? "" : `h${height}`,
    count === 1 ? "" : `x${count}`,
    cull === null ? "" : `c${cull}`,
    distance == null ? "" : `@${distance}`,
    note === "" ? "" : `/${note}`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}
