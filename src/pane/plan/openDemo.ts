import { demoWorkbook } from "../../demo/demoWorkbook";
import type { Pane } from "../pane";
import { layAsking } from "./layAsking";

/** Lays the invented woodlot, to look around in before there is a cruise of one's own. */
export const openDemo = (pane: Pane): Promise<void> =>
  layAsking(pane, demoWorkbook(), "Laying out the demo", () => {
    pane.go("home");
    pane.say("The demo is open. Its figures are invented.");
  });
