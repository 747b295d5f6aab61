import { html, nothing } from "lit";
import { tree as treeHeading } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { emptyState } from "../components/emptyState";
import { textField } from "../components/textField";
import { findings, type Finding } from "../job/findings";
import type { Fix } from "../job/fix";
import type { Pane } from "../pane";
import type { CheckState } from "../paneState";

/** What the Check columns of the workbook ask to look at, each with a way to the cell and, where it is plain, a fix. */
export function checkView(pane: Pane) {
  const { job, check } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "Odd entries will be listed here once there is a tally.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const all = findings(job);
  const open = all.filter(({ accepted }) => accepted === "");
  const accepted = all.filter(({ accepted }) => accepted !== "");
  return html`
    <div class="heading-line">
      <h2 class="count">${open.length === 0 ? "Nothing to look at" : `${open.length} to look at`}</h2>
      ${
        accepted.length > 0
          ? actionButton({
              label: check.showAccepted ? "Hide accepted" : `Show accepted (${accepted.length})`,
              kind: "quiet",
              onPress: () => set(pane, { showAccepted: !check.showAccepted }),
            })
          : nothing
      }
    </div>
    <ul class="findings">
      ${open.map((finding) => openFinding(pane, finding))}
    </ul>
    ${
      check.showAccepted && accepted.length > 0
        ? html`<h2>Accepted</h2>
            <ul class="findings">
              ${accepted.map((finding) => acceptedFinding(pane, finding))}
            </ul>`
        : nothing
    }
    <p class="hint">
      Every row is read again whenever a cell changes. What you keep stays on the sheet Checks with its reason, and goes
      into every copy.
    </p>
  `;
}

const openFinding = (pane: Pane, finding: Finding) =>
  html`<li class="finding">
    <h3>${finding.where}</h3>
    <p><span class="flag" aria-hidden="true">!</span>${finding.says}</p>
    <div class="actions">
      ${finding.fixes.map((fix) =>
        actionButton({
          label: fix.label,
          name: `${fix.label}: ${finding.where}`,
          onPress: () => void apply(pane, fix),
        }),
      )}
      ${goButton(pane, finding)}
      ${
        finding.canAccept && pane.state.check.explaining !== finding.id
          ? actionButton({
              label: "Keep as is - why?",
              kind: "quiet",
              name: `Keep as is - why? ${finding.where}`,
              onPress: () => {
                set(pane, { explaining: finding.id, reason: "" });
                pane.focus("check-reason");
              },
            })
          : nothing
      }
    </div>
    ${pane.state.check.explaining === finding.id ? reasonBox(pane, finding) : nothing}
  </li>`;

const acceptedFinding = (pane: Pane, finding: Finding) =>
  html`<li class="finding">
    <h3>${finding.where}</h3>
    <p>${finding.says}</p>
    <p>Kept because: ${finding.accepted}</p>
    <div class="actions">
      ${goButton(pane, finding)}
      ${actionButton({
        label: "Look at it again",
        kind: "quiet",
        name: `Look at it again: ${finding.where}`,
        onPress: () => void accept(pane, finding, null),
      })}
    </div>
  </li>`;

const goButton = (pane: Pane, { where, place }: Finding) =>
  actionButton({
    label: "Go",
    name: `Go to ${where}`,
    onPress: () => void pane.run("Going to the cell", () => pane.host.select(place)),
  });

const reasonBox = (pane: Pane, finding: Finding) =>
  html`<div class="reason">
    ${textField({
      id: "check-reason",
      label: "Why is it right as it is?",
      value: pane.state.check.reason,
      onInput: (reason) => set(pane, { reason }),
    })}
    <div class="actions">
      ${actionButton({
        label: "Keep it",
        kind: "main",
        disabled: pane.state.check.reason.trim() === "",
        onPress: () => void accept(pane, finding, pane.state.check.reason.trim()),
      })}
      ${actionButton({ label: "Not now", kind: "quiet", onPress: () => set(pane, { explaining: "" }) })}
    </div>
  </div>`;

const set = (pane: Pane, change: Partial<CheckState>) => pane.set({ check: { ...pane.state.check, ...change } });

async function apply(pane: Pane, { label, table, row, changes }: Fix): Promise<void> {
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
async function accept(pane: Pane, { place, where }: Finding, reason: string | null): Promise<void> {
  if (!("table" in place)) return;
  const done = await pane.run("Writing to the workbook", async () => {
    // Trees and points have the same heading for it.
    await pane.host.updateRow(place.table, place.row, { [treeHeading.accepted]: reason });
    set(pane, { explaining: "", reason: "" });
    await pane.refresh();
  });
  if (!done) return;
  pane.say(reason === null ? `${where} is open again.` : `${where} is kept, with its reason.`);
  pane.focus("pane-title");
}
