import type { KnownSpecies, TallyTree } from "./tallyTree";

/** A tree in words, as it will be saved: "red oak, 14.3 in, 2.5 logs". */
export function sayTree(tree: TallyTree, species: readonly KnownSpecies[], heightIs: "logs" | "feet" = "logs"): string {
  const known = species.find(({ code }) => code.toLowerCase() === tree.species.toLowerCase());
  const name = known && known.name !== "" ? known.name : tree.species;
  return [
    tree.count === 1 ? name : `${tree.count} trees of ${name}`,
    `${tree.dbh} in`,
    heights(tree, heightIs),
    tree.cull === null ? "" : `${tree.cull} % cull`,
    tree.distance == null ? "" : `taped at ${tree.distance} ft`,
    tree.note === "" ? "" : `note: ${tree.note}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** Which height was understood, in words; where there is none, which one is awaited. */
function heights({ logs, height }: TallyTree, heightIs: "logs" | "feet"): string {
  if (logs === null && height === null) return heightIs === "logs" ? "logs not measured" : "total height not measured";
  return [
    logs === null ? "" : `${logs} ${logs === 1 ? "log" : "logs"}`,
    height === null ? "" : `total height ${height} ft`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}
