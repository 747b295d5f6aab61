import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { ErrorCell } from "../../workbook/portable/errorCells";
import { actionButton } from "../components/actionButton";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { findings } from "../job/findings";
import type { Pane } from "../pane";
import { makeCopy } from "../share/makeCopy";
import { cautionOn } from "./cautionOn";
import { shareCsv } from "./shareCsv";

const ERRORS_SHOWN = 20;

/** A copy that opens without the add-in: values, and a sheet that says how they were made. */
export function shareView(pane: Pane) {
  const { job, share } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "A copy for a forester can be made here once there is a cruise.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const accepted = findings(job).filter(({ accepted: reason }) => reason !== "").length;
  return html`
    <p>A copy that opens anywhere, without this add-in. It will hold:</p>
    <ul class="holds">
      <li>every sheet as it stands now, with values in place of formulas</li>
      <li>a sheet Methods: each formula as text, the rule, the statistics and their sources</li>
      <li>
        the Check columns, with ${accepted === 0 ? "no accepted entries" : `${accepted} accepted and the reasons why`}
      </li>
    </ul>
    <label class="radio"
      ><input
        type="checkbox"
        .checked=${live(share.leaveOutPrivate)}
        @change=${(event: Event) =>
          pane.set({
            share: { ...share, leaveOutPrivate: (event.target as HTMLInputElement).checked },
            csv: { ...pane.state.csv, text: "" },
          })}
      />Leave out names, prices and map points</label
    >
    ${
      share.errors.length > 0
        ? stopped(pane, share.errors)
        : html`<div class="actions">
            ${actionButton({ label: "Make the copy", kind: "main", onPress: () => void makeCopy(pane, false) })}
          </div>`
    }
    ${share.made ? message({ kind: "done", text: share.made }) : nothing} ${shareCsv(pane, job)}
    ${cautionOn(pane, "Forester")}
  `;
}

const stopped = (pane: Pane, errors: readonly ErrorCell[]) =>
  html`${message({
      kind: "warning",
      text: `The copy was not made yet: ${errors.length === 1 ? "one cell shows" : `${errors.length} cells show`} an error, and would for ever.`,
      actions: [
        actionButton({ label: "Try again", kind: "main", onPress: () => void makeCopy(pane, false) }),
        actionButton({ label: "Make it all the same", onPress: () => void makeCopy(pane, true) }),
      ],
    })}
    <ul class="findings">
      ${errors.slice(0, ERRORS_SHOWN).map(
        ({ sheet, at, error, says }) =>
          html`<li class="finding">
            <p><strong>${sheet} ${at}</strong> shows ${error}. ${says}</p>
            <div class="actions">
              ${actionButton({
                label: "Go",
                name: `Go to ${sheet} ${at}`,
                onPress: () => void pane.run("Going to the cell", () => pane.host.select({ sheet, at })),
              })}
            </div>
          </li>`,
      )}
    </ul>
    ${errors.length > ERRORS_SHOWN ? html`<p class="hint">and ${errors.length - ERRORS_SHOWN} more.</p>` : nothing}`;
