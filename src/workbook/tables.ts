/** Names and headings that more than one sheet, the pane and the tests refer to. Typed once, here. */
export const TREES = "Trees";
export const PLOTS = "Plots";
export const SPECIES = "Species";
export const LOGS = "Logs";
export const BOARD_SIZES = "BoardSizes";
export const MILL = "Mill";
export const PRICES = "Prices";
export const COSTS = "Costs";

export const tree = {
  plot: "Plot",
  species: "Species",
  dbh: "DBH in",
  logs: "Logs 16 ft",
  count: "Count",
  take: "Take",
  cull: "Cull pct",
  note: "Note",
  volume: "Volume bf",
  lumber: "Lumber bf",
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
  counted: "Counted plot",
  check: "Check",
} as const;

export const species = { code: "Code", name: "Name", formClass: "Form class" } as const;

export const log = {
  log: "Log",
  species: "Species",
  smallEnd: "Small end in",
  largeEnd: "Large end in",
  length: "Length ft",
  deduction: "Deduction pct",
  use: "Use",
  note: "Note",
  gross: "Gross bf",
  net: "Net bf",
  lumber: "Lumber bf",
  check: "Check",
} as const;

/** Named cells on Setup and elsewhere. */
export const named = {
  stand: "Stand_Name",
  acres: "Acres",
  acresMargin: "Acres_Margin",
  method: "Cruise_Method",
  size: "Cruise_Size",
  confidence: "Confidence_Pct",
  target: "Target_Margin_Pct",
  rule: "Log_Rule",
  formClass: "Form_Class",
  classWidth: "Class_Width",
  units: "Units",
  minDbh: "Min_DBH",
  maxDbh: "Max_DBH",
  kerf: "Kerf",
  realized: "Realized_Pct",
  invented: "Invented_Data",
} as const;

/** Anchors of the spilled answers. */
export const out = {
  summary: "Out_Summary",
  harvest: "Out_Harvest",
  lumber: "Out_Lumber",
  stand: "Out_Stand",
  stock: "Out_Stock",
  species: "Out_Species",
  plots: "Out_Plots",
  tract: "Out_Tract",
  tractHarvest: "Out_Tract_Harvest",
  tractLumber: "Out_Tract_Lumber",
  sawPlan: "Out_Saw_Plan",
  compare: "Out_Compare",
} as const;
