import type { SheetPlan } from "../workbook/plan";
import { usualSettings } from "../workbook/settings";
import { species } from "../workbook/tables";
import type { WorkbookContent } from "../workbook/workbookContent";
import { workbookPlan } from "../workbook/workbookPlan";
import { demoBoards, demoLogs, demoMill } from "./demoLogs";
import { demoPoints } from "./demoPoints";
import { demoCosts, demoPrices } from "./demoPrices";
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
    minDbh: 10,
    kerf: 0.09,
  },
  species: [
    ["ro", "red oak"],
    ["wo", "white oak"],
    ["sm", "sugar maple"],
    ["yp", "yellow-poplar"],
    ["bc", "black cherry"],
    ["hi", "hickory"],
  ].map(([code, name]) => ({ [species.code]: code ?? null, [species.name]: name ?? null })),
  plots: demoPoints,
  trees: demoTrees,
  logs: demoLogs,
  boards: demoBoards,
  mill: demoMill,
  prices: demoPrices,
  costs: demoCosts,
  invented: true,
};

export const demoWorkbook = (): readonly SheetPlan[] => workbookPlan(demoContent);
