import type { SheetPlan } from "./plan";
import { BOARDS_SHEET, boardsSheet } from "./sheets/boards";
import { buckingSheet } from "./sheets/bucking";
import { BUCKING } from "./sheets/buckingCells";
import { cardSheet } from "./sheets/card";
import { CHECKS, checksSheet } from "./sheets/checks";
import { COMPARE, compareSheet } from "./sheets/compare";
import { FIELD_TALLY, fieldTallySheet } from "./sheets/fieldTally";
import { CARD_SHEET } from "./sheets/logCells";
import { localVolumeSheet } from "./sheets/localVolume";
import { LOCAL_VOLUME } from "./sheets/localVolumeCells";
import { cutListSheet } from "./sheets/cutList";
import { CUT_LIST_SHEET } from "./sheets/cutListCells";
import { LOGS_SHEET, logsSheet } from "./sheets/logs";
import { OUTLINE_SHEET, outlineSheet } from "./sheets/outline";
import { POINT_LIST, pointListSheet } from "./sheets/pointList";
import { CUT, cutSheet } from "./sheets/cut";
import { MILL_SHEET, millSheet } from "./sheets/mill";
import { DESIGN, designSheet } from "./sheets/design";
import { MARGINS, marginsSheet } from "./sheets/margins";
import { POINTS, pointsSheet } from "./sheets/points";
import { PRICES_SHEET, pricesSheet } from "./sheets/prices";
import { PRODUCTS_SHEET, productsSheet } from "./sheets/products";
import { RULES_SHEET, rulesSheet } from "./sheets/rules";
import { SAWING, sawingSheet } from "./sheets/sawing";
import { SETUP, setupSheet, speciesCodes } from "./sheets/setup";
import { SOURCES, sourcesSheet } from "./sheets/sources";
import { STAND, standSheet } from "./sheets/stand";
import { standTableSheet, stockTableSheet } from "./sheets/standTables";
import { startSheet } from "./sheets/start";
import { TREES_SHEET, treesSheet } from "./sheets/trees";
import { WORKING_SHEET, workingSheet } from "./sheets/working";
import { species } from "./tables";
import type { WorkbookContent } from "./workbookContent";

const purposes: readonly (readonly [name: string, purpose: string])[] = [
  [SETUP, "Acres, method, log rule and the other assumptions; your species"],
  [DESIGN, "Strata, nested plots and slope, where the cruise is more than plain points"],
  [POINTS, "The plots, empty ones too, and what each says per acre"],
  [OUTLINE_SHEET, "Corners of the tract, and how the grid of points lies on it"],
  [POINT_LIST, "The points to print and take along, with bearings and distances"],
  [FIELD_TALLY, "Sheets to fill in the woods, with the limiting distances of your gauge"],
  [TREES_SHEET, "The tally, tree by tree"],
  [STAND, "Trees, basal area and volume per acre and of the tract, each with its margin"],
  ["Stand table", "Trees per acre by diameter class and species"],
  ["Stock table", "Board feet per acre by diameter class and species"],
  [MARGINS, "The same plots by strata, clusters, the walk, counts, or a check"],
  [CUT, "Before, cut and leave: the stand, how crowded, by diameter and by species"],
  [PRODUCTS_SHEET, "What your trees can be cut into, and how much of each the stand holds"],
  [BUCKING, "The best-paying way to cut one stem, beside habits of cutting it"],
  [LOCAL_VOLUME, "A volume table of your own, from trees you felled, with its error"],
  [LOGS_SHEET, "Felled logs: scaled by the buyer's rule and conventions, and what they should saw out to"],
  [CARD_SHEET, "The buyer's own printed table, when he scales by one"],
  [RULES_SHEET, "The same logs under other rules, and board feet by diameter"],
  [WORKING_SHEET, "How the scale of one log came about, step by step; also of its cubic feet, boards and weights"],
  [MILL_SHEET, "The boards you want, their thickness at the saw, and what your mill can take"],
  [SAWING, "The cut list of one log, what another kerf or product would make of it, and settings for equal boards"],
  [CUT_LIST_SHEET, "The pieces of a building, to be found in the yard or in the stand"],
  [BOARDS_SHEET, "Boards that were sawn, and their tally"],
  [PRICES_SHEET, "Prices and costs, with their sources"],
  [COMPARE, "Sell standing, sell logs or saw at home"],
  [CHECKS, "All that looks odd, and what was kept with its reason"],
  [SOURCES, "Where the methods come from, and what to beware of"],
];

/** The whole workbook: every sheet laid out, its formulas live, filled with what is given. */
export const workbookPlan = (content: WorkbookContent): readonly SheetPlan[] => [
  startSheet(purposes),
  setupSheet(content),
  designSheet(content),
  pointsSheet(content),
  outlineSheet(content.layout),
  pointListSheet(content.plots.length),
  fieldTallyOf(content),
  treesSheet(content),
  standSheet(),
  standTableSheet(content),
  stockTableSheet(content),
  marginsSheet(),
  cutSheet(),
  productsSheet(content),
  buckingSheet(content),
  localVolumeSheet(content),
  logsSheet(content),
  cardSheet(),
  rulesSheet(),
  workingSheet(),
  millSheet(content),
  sawingSheet(content),
  cutListSheet(content),
  boardsSheet(content),
  pricesSheet(content),
  compareSheet(),
  checksSheet(),
  sourcesSheet(),
];

const fieldTallyOf = (content: WorkbookContent): SheetPlan =>
  fieldTallySheet({
    points: content.plots.length,
    species: content.species.map((row) => ({
      code: String(row[species.code] ?? ""),
      name: String(row[species.name] ?? ""),
    })),
    speciesCells: speciesCodes(content),
  });
