import * as boards from "./boards";
import * as boardSizes from "./boardSizes";
import * as bucking from "./bucking";
import * as checks from "./checks";
import * as classTables from "./classTables";
import * as count from "./count";
import * as cut from "./cut";
import * as cutParts from "./cutParts";
import * as cutLists from "./cutLists";
import * as density from "./density";
import * as describe from "./describe";
import * as designs from "./designs";
import * as harvest from "./harvest";
import * as inOrOut from "./inOrOut";
import * as localTables from "./localTables";
import * as logCubic from "./logCubic";
import * as logMeasures from "./logMeasures";
import * as logs from "./logs";
import * as millSetup from "./millSetup";
import * as money from "./money";
import * as outline from "./outline";
import * as plan from "./plan";
import * as products from "./products";
import * as sampling from "./sampling";
import * as sawBound from "./sawBound";
import * as sawChoices from "./sawChoices";
import * as sawing from "./sawing";
import * as scaleSheets from "./scaleSheets";
import * as scaling from "./scaling";
import * as speciesList from "./speciesList";
import * as stand from "./stand";
import * as standSummary from "./standSummary";
import * as strata from "./strata";
import * as stem from "./stem";
import * as taper from "./taper";
import * as tree from "./tree";
import * as treeMeasures from "./treeMeasures";
import * as treeWeight from "./treeWeight";
import * as trust from "./trust";
import * as wood from "./wood";
import * as woods from "./woods";
import * as working from "./working";

/** Hands every function of a shell file to the spreadsheet under its upper-cased name; menus of texts are passed over. */
const shells = [
  plan,
  outline,
  inOrOut,
  woods,
  tree,
  treeMeasures,
  stem,
  taper,
  treeWeight,
  localTables,
  speciesList,
  harvest,
  bucking,
  stand,
  standSummary,
  classTables,
  checks,
  products,
  sampling,
  logs,
  logCubic,
  scaling,
  scaleSheets,
  logMeasures,
  sawing,
  sawBound,
  sawChoices,
  millSetup,
  cutLists,
  boards,
  boardSizes,
  wood,
  money,
  working,
  trust,
  strata,
  count,
  density,
  cut,
  cutParts,
  describe,
  designs,
];

for (const shell of shells) {
  for (const [name, one] of Object.entries<unknown>(shell)) {
    if (typeof one === "function")
      CustomFunctions.associate(name.toUpperCase(), one as (...args: unknown[]) => unknown);
  }
}
