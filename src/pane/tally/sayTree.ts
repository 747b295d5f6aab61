import type { KnownSpecies, TallyTree } from "./tallyTree";

/** A tree in words, as it will be saved: "red oak, 14.3 in, 2.5 logs". */
export function sayTree(tree: TallyTree, species: readonly KnownSpecies[]): string {
  const known = species.find(({ code }) => code.toLowerCase() === tree.species.toLowerCase());
  const name = known && known.name !== "" ? known.name : tree.species;
  return [
    tree.count === 1 ? name : `${tree.count} trees of ${name}`,
    `${tree.dbh} in`,
    tree.logs === null ? "logs not measured" : `${tree.logs} ${tree.logs === 1 ? "log" : "logs"}`,
    tree.cull === null ? "" : `${tree.cull} % cull`,
    tree.note === "" ? "" : `note: ${tree.note}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}
