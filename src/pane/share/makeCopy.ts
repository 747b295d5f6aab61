import { figure } from "../figures";
import type { Pane } from "../pane";

/** Makes the copy without formulas and hands it over; cells with errors stop it, unless they are wanted all the same. */
export async function makeCopy(pane: Pane, withErrors: boolean): Promise<void> {
  const set = (change: Partial<Pane["state"]["share"]>) => pane.set({ share: { ...pane.state.share, ...change } });
  set({ made: "", errors: [] });
  await pane.run("Making the copy", async () => {
    // Loaded when it is asked for: it brings the writer of files along.
    const { makePortable, planPortable } = await import("../../workbook/portable/portableCopy");
    const plan = planPortable(await pane.host.copy(), pane.state.share.leaveOutPrivate);
    if (plan.errors.length > 0 && !withErrors) return set({ errors: plan.errors });
    await pane.host.openCopy(await makePortable(plan, withErrors), plan.fileName);
    const made = `${plan.fileName}: ${figure(plan.sheets.length)} sheets, ${figure(plan.formulas)} formulas turned into values. Save it, then send it.`;
    set({ made });
    return pane.say("The copy is made.");
  });
}
