import type { SheetPlan } from "../../workbook/plan";
import type { Pane } from "../pane";
import { layAsking } from "./layAsking";

/** Lays the invented woodlot, to look around in before there is a cruise of one's own. */
export async function openDemo(pane: Pane): Promise<void> {
  let sheets: readonly SheetPlan[] = [];
  const loaded = await pane.run("Laying out the demo", async () => {
    // Loaded when it is asked for, with the plans of all sheets.
    sheets = (await import("../../demo/demoWorkbook")).demoWorkbook();
  });
  if (!loaded) return;
  await layAsking(pane, sheets, "Laying out the demo", () => {
    pane.go("home");
    pane.say("The demo is open. Its figures are invented.");
  });
}
