import { likeCodes } from "../../core/cruise/likeCodes";
import { SPECIES, species as speciesHeading, tree as treeHeading, TREES } from "../../workbook/tables";
import type { Fix } from "./fix";
import type { Job, SavedTree } from "./job";

/** Changes that would settle what a tree is asked about. */
export const treeFixes = (saved: SavedTree, job: Job): readonly Fix[] => [
  ...misplacedPoint(saved, job),
  ...feetForLogs(saved),
  ...otherSpecies(saved, job),
];

const use = (label: string | number, row: number, heading: string): Fix => ({
  label: `Use ${label}`,
  table: TREES,
  row,
  changes: { [heading]: label },
});

/** 143 was meant as 14.3 when a tenth of it is a diameter that the checks let pass. */
function misplacedPoint({ row, tree, check }: SavedTree, { minDbh, maxDbh }: Job): readonly Fix[] {
  const tenth = Number((tree.dbh / 10).toFixed(2));
  if (!check.startsWith("DBH") || tree.dbh <= maxDbh || tenth < minDbh || tenth > maxDbh) return [];
  return [use(tenth, row, treeHeading.dbh)];
}

function feetForLogs({ row, check }: SavedTree): readonly Fix[] {
  const logs = /look like feet: .* make ([\d.]+) logs/.exec(check)?.[1];
  return logs === undefined ? [] : [use(Number(logs), row, treeHeading.logs)];
}

/** One of the list that a slip of the key would have turned into this, or else the code itself as a new one. */
function otherSpecies({ row, tree, check }: SavedTree, { species }: Job): readonly Fix[] {
  const codes = species.map(({ code }) => code);
  const known = codes.some((code) => code.toLowerCase() === tree.species.toLowerCase());
  if (known || tree.species === "" || !check.includes("species list")) return [];
  return [
    ...likeCodes(tree.species, codes).map((code) => use(code, row, treeHeading.species)),
    {
      label: `Add ${tree.species}`,
      table: SPECIES,
      row: undefined,
      changes: { [speciesHeading.code]: tree.species, [speciesHeading.name]: tree.species },
    },
  ];
}

/** The cell that a sentence asks about, by how it begins or what it names. */
export const cellInDoubt = (check: string): string =>
  cells.find(([words]) => words.test(check))?.[1] ?? treeHeading.plot;

const cells: readonly (readonly [words: RegExp, heading: string])[] = [
  [/^(DBH|Half of the trees)/, treeHeading.dbh],
  [/^Taped at/, treeHeading.distance],
  [/^Total height/, treeHeading.height],
  [/species/i, treeHeading.species],
  [/logs/i, treeHeading.logs],
];
