import { tree as treeHeading } from "../../workbook/tables";
import type { Finding } from "../job/findings";
import type { Fix } from "../job/fix";
import type { Pane } from "../pane";
import type { CheckState } from "../paneState";

export const setCheck = (pane: Pane, change: Partial<CheckState>) =>
  pane.set({ check: { ...pane.state.check, ...change } });

/** Does what a fix says. */
export async function applyFix(pane: Pane, { label, table, row, changes }: Fix): Promise<void> {
  const done = await pane.run("Writing to the workbook", async () => {
    if (row === undefined) await pane.host.appendRows(table, [changes]);
    else await pane.host.updateRow(table, row, changes);
    await pane.refresh();
  });
  if (!done) return;
  pane.say(`${label}: done.`);
  pane.focus("pane-title");
}

/** Writes the reason beside the row, or takes it back; the row number is that of the last reading, moments ago. */
export async function accept(pane: Pane, { place, where }: Finding, reason: string | null): Promise<void> {
  if (!("table" in place)) return;
  const done = await pane.run("Writing to the workbook", async () => {
    // Trees and points have the same heading for it.
    await pane.host.updateRow(place.table, place.row, { [treeHeading.accepted]: reason });
    setCheck(pane, { explaining: "", reason: "" });
    await pane.refresh();
  });
  if (!done) return;
  pane.say(reason === null ? `${where} is open again.` : `${where} is kept, with its reason.`);
  pane.focus("pane-title");
}
