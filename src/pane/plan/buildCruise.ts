import type { SheetPlan } from "../../workbook/plan";
import type { Pane } from "../pane";
import { layAsking } from "./layAsking";
import { readStrata, strataRows } from "./planStrata";
import type { PlanReading } from "./readPlan";
import { speciesList } from "./speciesList";

/** Builds the workbook of a cruise of one's own, and goes on to the tally. */
export async function buildCruise(pane: Pane, { settings, points }: PlanReading): Promise<void> {
  if (!settings || points === undefined) return;
  let sheets: readonly SheetPlan[] = [];
  const loaded = await pane.run("Building the workbook", async () => {
    // Loaded when it is asked for, with the plans of all sheets.
    const { emptyWorkbook } = await import("../../workbook/emptyWorkbook");
    const { species, strata } = pane.state.plan;
    sheets = emptyWorkbook({
      settings,
      plots: points,
      species: speciesList(species),
      strata: strataRows(readStrata(strata)),
    });
  });
  if (!loaded) return;
  await layAsking(pane, sheets, "Building the workbook", () => {
    pane.go("tally");
    pane.say(`The workbook is built, with ${points} points to visit.`);
  });
}
