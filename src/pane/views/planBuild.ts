import { html, nothing } from "lit";
import { actionButton } from "../components/actionButton";
import type { Pane } from "../pane";
import { buildCruise } from "../plan/buildCruise";
import type { PlanReading } from "../plan/readPlan";

/** Making the workbook of the plan, and printing the tally of the one that is there. */
export function planBuild(pane: Pane, reading: PlanReading) {
  const { plan, job } = pane.state;
  const hasWorkbook = typeof job === "object" && job.plots.length > 0;
  return html`<div class="actions">
      ${actionButton({
        label: "Build workbook",
        kind: "main",
        disabled: reading.settings === undefined,
        onPress: () => void buildCruise(pane, reading),
      })}
      ${hasWorkbook ? actionButton({ label: "Print tally", onPress: () => void showTally(pane) }) : nothing}
    </div>
    ${
      reading.settings === undefined
        ? html`<p class="hint">
            ${plan.acres.trim() === "" ? "Type the acres first." : "Mend the boxes marked above first."}
          </p>`
        : nothing
    }`;
}

/** No pane may print, so it leads to the sheet and says how. */
async function showTally(pane: Pane): Promise<void> {
  const there = await pane.run("Going to the sheet", async () => {
    const { FIELD_TALLY } = await import("../../workbook/sheets/fieldTally");
    await pane.host.select({ sheet: FIELD_TALLY, at: "A1" });
  });
  if (there) pane.say("This is the tally to print: use the spreadsheet's own print command.");
}
