/** Names and headings that more than one sheet, the pane and the tests refer to. Typed once, here. */
export const TREES = "Trees";
export const PLOTS = "Plots";
export const SPECIES = "Species";
export const OUTLINE = "Outline";
export const STRATA = "Strata";
export const NESTED = "Nested";
export const LOGS = "Logs";
export const BOARDS = "Boards";
export const BOARD_SIZES = "BoardSizes";
export const MILL = "Mill";
export const CUT_LIST = "CutList";
export const PRICES = "Prices";
export const COSTS = "Costs";
export const PRODUCTS = "Products";
export const FELLED_TREES = "FelledTrees";
export const STEM_FLAWS = "StemFlaws";

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

export const log = {
  log: "Log",
  species: "Species",
  smallEnd: "Small end inside bark in",
  second: "Second reading in",
  largeEnd: "Large end in",
  length: "Length ft",
  deduction: "Deduction pct",
  use: "Use",
  note: "Note",
  scalingDiameter: "Scaling diameter in",
  scalingLength: "Scaling length ft",
  gross: "Gross bf",
  net: "Net bf",
  lumber: "Lumber bf",
  overrun: "Overrun pct",
  sawn: "Sawn bf",
  weight: "Weight lb",
  check: "Check",
} as const;

/** Boards that were sawn, a line for each size and log. */
export const sawn = {
  date: "Date",
  log: "Log",
  species: "Species",
  thickness: "Thickness in",
  width: "Width in",
  length: "Length ft",
  pieces: "Pieces",
  grade: "Grade note",
  stack: "Stack",
  boardFeet: "Board feet",
  check: "Check",
} as const;

/** Boards that are wanted from a log. */
export const board = {
  thickness: "Thickness in",
  width: "Width in",
  length: "Length ft",
  product: "Product",
  each: "Price per piece",
  price: "Price per MBF",
} as const;

/** Pieces of a building that are wanted. */
export const wanted = {
  piece: "Piece",
  thickness: "Thickness in",
  width: "Width in",
  length: "Length ft",
  count: "Count",
  boardFeet: "Board feet",
  check: "Check",
} as const;
/** Grades that the owner expects of his lumber, and what else he knows of a plan's worth. */
export const GRADE_SHARES = "GradeShares";
export const gradeShare = { grade: "Grade", share: "Share pct", price: "Price per MBF" } as const;
export const SAW_RATES = "SawRates";
export const sawRate = { rate: "Rate", value: "Value", unit: "Unit" } as const;

/** Products that are tried beside the boards wanted. */
export const MORE_PRODUCTS = "MoreProducts";

export const mill = {
  limit: "Limit",
  value: "Value",
  unit: "Unit",
  comment: "Comment",
} as const;

export const price = {
  product: "Product",
  low: "Low",
  likely: "Likely",
  high: "High",
  unit: "Unit",
  source: "Source",
  date: "Date",
  check: "Check",
} as const;

/** What trees are cut into, in the order of columns in which the functions read a product. */
export const product = {
  product: "Product",
  smallestEnd: "Small end in",
  shortest: "Shortest ft",
  longest: "Longest ft",
  step: "Step ft",
  soldBy: "Sold by",
  price: "Price",
  unit: "Price unit",
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

/** Parts of the stem on the sheet Bucking that no log may hold. */
export const flaw = { from: "From ft", to: "To ft", what: "What" } as const;

export const cost = {
  item: "Item",
  amount: "Amount",
  unit: "Unit",
  comment: "Comment",
} as const;

/** Products and costs that the sheet Compare looks up by these words. */
export const products = {
  standing: "Standing timber",
  logs: "Logs, delivered",
  lumber: "Rough lumber, green",
} as const;

export const costItems = {
  logging: "Felling and skidding",
  hauling: "Hauling logs to the buyer",
  milling: "Mill, blades and fuel",
  hours: "Own hours at the mill",
  pay: "Pay for an own hour",
  drying: "Stickers, yard and selling",
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
  heightMeasured: "Height_Measured",
  productsBy: "Products_By",
  division: "Division",
  origin: "Stand_Origin",
  classWidth: "Class_Width",
  classRule: "Class_Rule",
  population: "Plots_In_Tract",
  slopeWay: "Slope_Way",
  units: "Units",
  minDbh: "Min_DBH",
  maxDbh: "Max_DBH",
  kerf: "Kerf",
  realized: "Realized_Pct",
  invented: "Invented_Data",
  scaleRule: "Scale_Rule",
  diameterRounding: "Diameter_Rounding",
  scaleRounding: "Scale_Rounding",
  longestLength: "Longest_Scaling_Length",
  trim: "Scale_Trim",
  lengthStep: "Length_Step",
  rulesLength: "Rules_Length",
  rulesShown: "Rules_Shown",
  boardMeasure: "Board_Measure",
  tallyBy: "Tally_By",
  pickedLog: "Picked_Log",
  workedFunction: "Worked_Function",
  pattern: "Saw_Pattern",
  sweep: "Saw_Sweep",
  taper: "Saw_Taper",
  localForm: "Local_Form",
  localUse: "Local_Use",
  localSpecies: "Local_Species",
  spares: "Spares_Pct",
  cutGoal: "Cut_Goal",
  stemSpecies: "Stem_Species",
  stemDbh: "Stem_DBH",
  stemHeight: "Stem_Height",
  stemLogs: "Stem_Logs",
  stemStump: "Stem_Stump",
  stemTrim: "Stem_Trim",
  priceNotice: "Price_Notice",
  verdict: "Verdict",
  checksOpen: "Checks_Open",
  spacing: "Point_Spacing",
  seed: "Point_Seed",
  linesBearing: "Lines_Bearing",
  walkFrom: "Walk_From",
  startCorner: "Start_Corner",
  declination: "Declination",
  pace: "Pace_Feet",
  latitude: "Map_Latitude",
  longitude: "Map_Longitude",
  outlineFrom: "Outline_From",
} as const;

/** Anchors of the spilled answers. */
export const out = {
  summary: "Out_Summary",
  harvest: "Out_Harvest",
  lumber: "Out_Lumber",
  products: "Out_Products",
  harvestProducts: "Out_Harvest_Products",
  wood: "Out_Wood",
  stand: "Out_Stand",
  stock: "Out_Stock",
  species: "Out_Species",
  plots: "Out_Plots",
  plotChecks: "Out_Plot_Checks",
  treeChecks: "Out_Tree_Checks",
  checks: "Out_Checks",
  grid: "Out_Grid",
  cut: "Out_Cut",
  cutDensity: "Out_Cut_Density",
  cutClasses: "Out_Cut_Classes",
  cutSpecies: "Out_Cut_Species",
  importance: "Out_Importance",
  plotsByStratum: "Out_Plots_By_Stratum",
  strataVolume: "Out_Strata_Volume",
  strataArea: "Out_Strata_Basal_Area",
  clusters: "Out_Clusters",
  usualMargin: "Out_Usual_Margin",
  walkingMargin: "Out_Walking_Margin",
  countMeasure: "Out_Count_Measure",
  doubleSample: "Out_Double_Sample",
  recheck: "Out_Recheck",
  tract: "Out_Tract",
  tractHarvest: "Out_Tract_Harvest",
  tractLumber: "Out_Tract_Lumber",
  morePlots: "Out_More_Plots",
  logRules: "Out_Log_Rules",
  scaleSheet: "Out_Scale_Sheet",
  rules: "Out_Rules",
  logNames: "Out_Log_Names",
  logsByRule: "Out_Logs_By_Rule",
  working: "Out_Working",
  boards: "Out_Boards",
  boardOverrun: "Out_Board_Overrun",
  sawPlan: "Out_Saw_Plan",
  sawYield: "Out_Saw_Yield",
  sawLayout: "Out_Saw_Layout",
  sawWhatIf: "Out_Saw_What_If",
  sawValue: "Out_Saw_Value",
  localFit: "Out_Local_Fit",
  localTable: "Out_Local_Table",
  buckPlan: "Out_Buck_Plan",
  buckHabits: "Out_Buck_Habits",
  standing: "Out_Standing",
  asLogs: "Out_As_Logs",
  sawn: "Out_Sawn",
  compare: "Out_Compare",
  breakEven: "Out_Break_Even",
  build: "Out_Build",
} as const;

/** Every name that the workbook's own cells have. */
export const workbookNames: ReadonlySet<string> = new Set([...Object.values(named), ...Object.values(out)]);
