import { byTotalHeight } from "../core/cruise/checkHeight";
import { doyle } from "../core/log/rules/doyle";
import type { SheetPlan } from "../workbook/plan";
import { usualSettings } from "../workbook/settings";
import type { WorkbookContent } from "../workbook/workbookContent";
import { workbookPlan } from "../workbook/workbookPlan";
import { demoLayout } from "./demoLayout";
import { demoCutList } from "./demoCutList";
import { demoBoards, demoEqualBoards, demoLogs, demoMill } from "./demoLogs";
import { demoPoints } from "./demoPoints";
import { demoCosts, demoPrices } from "./demoPrices";
import { demoProducts } from "./demoProducts";
import { demoSawn } from "./demoSawn";
import { demoLocalVolume } from "./demoLocalVolume";
import { demoStem } from "./demoStem";
import { demoSpecies } from "./demoSpecies";
import { demoTrees } from "./demoTally";

/** A woodlot that does not exist: no real owner, place, tree or price. */
export const demoContent: WorkbookContent = {
  settings: {
    ...usualSettings,
    stand: "Demo woodlot - invented",
    acres: 32,
    target: 10,
    size: 10,
    rule: "International 1/4",
    formClass: 78,
    productsBy: byTotalHeight.title,
    minDbh: 10,
    kerf: 0.09,
    scale: { ...usualSettings.scale, rule: doyle.title, trim: 0.33 },
  },
  species: demoSpecies,
  plots: demoPoints,
  layout: demoLayout,
  trees: demoTrees,
  logs: demoLogs,
  boards: demoBoards,
  sawn: demoSawn,
  mill: demoMill,
  equalBoards: demoEqualBoards,
  cutList: demoCutList,
  products: demoProducts,
  localVolume: demoLocalVolume,
  stem: demoStem,
  prices: demoPrices,
  costs: demoCosts,
  invented: true,
};

export const demoWorkbook = (): readonly SheetPlan[] => workbookPlan(demoContent);
