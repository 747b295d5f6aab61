import { html, nothing } from "lit";
import { accept, applyFix, setCheck } from "../check/settle";
import { actionButton } from "../components/actionButton";
import { emptyState } from "../components/emptyState";
import { textField } from "../components/textField";
import { findings, type Finding } from "../job/findings";
import type { Pane } from "../pane";

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
              onPress: () => setCheck(pane, { showAccepted: !check.showAccepted }),
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
          onPress: () => void applyFix(pane, fix),
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
                setCheck(pane, { explaining: finding.id, reason: "" });
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
      onInput: (reason) => setCheck(pane, { reason }),
    })}
    <div class="actions">
      ${actionButton({
        label: "Keep it",
        kind: "main",
        disabled: pane.state.check.reason.trim() === "",
        onPress: () => void accept(pane, finding, pane.state.check.reason.trim()),
      })}
      ${actionButton({ label: "Not now", kind: "quiet", onPress: () => setCheck(pane, { explaining: "" }) })}
    </div>
  </div>`;
