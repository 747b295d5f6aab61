import { call, thisRow } from "../formula";
import { named, tree, TREES } from "../tables";
import { byLocalTable, localWood } from "./localVolumeCells";
import { quoted } from "./sheetParts";

const here = (heading: string) => thisRow(TREES, heading);

/** The two roads to a volume are never mixed in silence: this says which one a tree took. */
export const roadTaken = `=IF(${here(tree.dbh)}="","",IF(${here(tree.logs)}<>"",IF(${here(tree.height)}<>"",IF(${byLocalTable(here(tree.species))},"Logs and local table","Logs and total height"),"Logs"),IF(${here(tree.height)}<>"",IF(${byLocalTable(here(tree.species))},"Local table","Total height"),"")))`;

export const noHeight = `OR(${here(tree.dbh)}="",${here(tree.height)}="")`;

const national = (name: "STEMVOLUME" | "TREEWEIGHT", part: string) =>
  call(
    name,
    here(tree.key),
    here(tree.dbh),
    here(tree.height),
    quoted(part),
    named.division,
    named.origin,
    ...['""', '""'],
    named.units,
  );

/** The owner's own table stands in for the national equation where he said so. */
export const woodByHeight = `=IF(${noHeight},"",IF(${byLocalTable(here(tree.species))},${localWood(here(tree.dbh), here(tree.height))},${national("STEMVOLUME", "Wood")}))`;

/** Green stem wood of a tree by its total height. */
export const greenWeight = `=IF(${noHeight},"",${national("TREEWEIGHT", "Stem wood, green")})`;
