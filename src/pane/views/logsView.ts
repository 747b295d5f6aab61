import { html, nothing } from "lit";
import { LOGS_SHEET } from "../../workbook/sheets/logs";
import { SAWING } from "../../workbook/sheets/sawing";
import { actionButton } from "../components/actionButton";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { estimateLines } from "../components/estimateLine";
import { section } from "../components/section";
import { figure } from "../figures";
import type { Job, SavedLog } from "../job/job";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";

/** Felled logs as they were scaled, and the lumber that logs and standing trees should saw out to. */
export function logsView(pane: Pane) {
  const { job, stand } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "Scaled logs and the lumber they should saw out to stand here once there is a workbook.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const go = (sheet: string, label: string) =>
    actionButton({
      label,
      onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet, at: "A1" })),
    });
  return html`
    ${
      job.logs.length === 0
        ? html`<p>No logs yet. Type each one on the sheet Logs: small end inside bark, length and deduction.</p>`
        : scaled(job)
    }
    <div class="actions">${go(LOGS_SHEET, "Go to Logs")} ${go(SAWING, "Go to Sawing")}</div>
    ${
      stand?.tractLumber
        ? section(
            "Standing trees",
            estimateLines([
              { title: "Lumber the harvest should saw out to", unit: "bf", estimated: stand.tractLumber },
            ]),
          )
        : nothing
    }
    ${cautionOn(pane, "Ungraded lumber")}
  `;
}

/** The sum of what is known, and how many logs it leaves out. */
function total(logs: readonly SavedLog[], of: "net" | "lumber"): string {
  const known = logs.map((log) => log[of]).filter((value) => value !== null);
  const lacking = logs.length - known.length;
  if (known.length === 0) return "not known yet";
  return `${figure(known.reduce((sum, value) => sum + value, 0))} bf${lacking > 0 ? ` without ${lacking} of them` : ""}`;
}

const scaled = ({ logs, rule }: Job) =>
  html`<p class="answer">
      <strong>${logs.length} ${logs.length === 1 ? "log" : "logs"}</strong>
      <br />Net scale by ${rule}: ${total(logs, "net")} <br />Lumber: ${total(logs, "lumber")}
    </p>
    ${dataTable(
      "Scaled logs, in board feet",
      ["Log", "Net scale", "Lumber"],
      logs.map(({ name, net, lumber }) => [
        name,
        ...[net, lumber].map((value) => (value === null ? "" : figure(value))),
      ]),
    )}`;
