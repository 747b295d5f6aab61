/** Tables of a cruise: trees, points, the tract and its parts. Names and headings are typed once, here. */
export const TREES = "Trees";
export const PLOTS = "Plots";
export const OUTLINE = "Outline";
export const STRATA = "Strata";
export const NESTED = "Nested";

export const tree = {
  plot: "Plot",
  species: "Species",
  dbh: "DBH in",
  logs: "Logs 16 ft",
  height: "Height ft",
  count: "Count",
  take: "Take",
  cull: "Cull pct",
  note: "Note",
  distance: "Distance ft",
  road: "Volume by",
  formClass: "Form class",
  volume: "Volume bf",
  lumber: "Lumber bf",
  harvestDbh: "Harvest DBH in",
  harvest: "Harvest bf",
  key: "National code",
  wood: "Wood ft3",
  weight: "Green lb",
  perAcre: "Trees per acre",
  left: "Left out",
  check: "Check",
  accepted: "Accepted because",
} as const;

export const plot = {
  plot: "Plot",
  east: "East ft",
  north: "North ft",
  date: "Date",
  crew: "Crew",
  visited: "Visited",
  none: "Trees none",
  slope: "Slope pct",
  note: "Note",
  tallied: "Tally rows",
  counted: "Counted plot",
  volume: "Volume bf per ac",
  check: "Check",
  stratum: "Stratum",
  cluster: "Cluster",
  size: "Own size",
  sweep: "Sweep",
  outside: "Outside",
  kind: "Kind",
  recheck: "Recheck bf per ac",
  sizeUsed: "Size used",
  radius: "Plot radius ft",
  stratumUsed: "Counted stratum",
  clusterUsed: "Counted cluster",
  anyPoint: "Counted point",
  tallyArea: "Tallied ft2 per ac",
  basalArea: "Basal area ft2 per ac",
  accepted: "Accepted because",
} as const;

/** Corners of the tract. */
export const corner = { corner: "Corner", east: "East ft", north: "North ft" } as const;

/** Parts of the tract that are cruised each by itself; guesses are there to share out the plots. */
export const stratum = {
  stratum: "Stratum",
  acres: "Acres",
  guess: "Guess per ac",
  variation: "CV pct",
  plots: "Counted plots",
  check: "Check",
} as const;

/** Nested plots, by the least diameter that each takes in. */
export const nested = { least: "Least DBH in", size: "Size", kind: "Read as", radius: "Radius ft" } as const;
