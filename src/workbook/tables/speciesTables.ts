/** Tables of species, and of the felled trees that a local volume table is fitted to. Names and headings are typed once, here. */
export const SPECIES = "Species";
export const FELLED_TREES = "FelledTrees";

export const species = {
  code: "Code",
  name: "Name",
  fia: "FIA code",
  check: "Check",
  national: "National species",
  scientific: "Scientific name",
  group: "Group",
  formClass: "Form class",
  usedFormClass: "Form class used",
  density: "Green lb per ft3",
  listedDensity: "Listed green lb per ft3",
  gravity: "Specific gravity",
  barkRatio: "Bark ratio",
  key: "National code",
} as const;

/** Felled trees that a local volume table is fitted to. */
export const felled = {
  tree: "Tree",
  species: "Species",
  dbh: "DBH in",
  height: "Height ft",
  volume: "Volume ft3",
  note: "Note",
  byTable: "By table ft3",
  off: "Off pct",
} as const;
