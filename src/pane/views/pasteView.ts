import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { LineNote } from "../../workbook/lineNote";
import type { PastedTally } from "../../workbook/pastedTally";
import { actionButton } from "../components/actionButton";
import { message } from "../components/message";
import type { Pane } from "../pane";
import { readPasted } from "../paste/readPasted";
import { setPaste } from "../paste/setPaste";
import { pasteDestination } from "./pasteDestination";
import { pastePreview } from "./pastePreview";

const NOTES_SHOWN = 20;

/** A tally from elsewhere: pasted, looked over, then taken into the workbook. */
export function pasteView(pane: Pane) {
  const { paste } = pane.state;
  const job = typeof pane.state.job === "object" ? pane.state.job : undefined;
  const pasted = paste.text.trim() === "" ? undefined : readPasted(paste.text, paste.columns);
  return html`
    ${paste.result ? done(pane, paste.result) : nothing}
    <div class="field">
      <label for="paste-text">Paste rows from a spreadsheet or a text file</label>
      <textarea
        id="paste-text"
        rows="5"
        spellcheck="false"
        aria-describedby="paste-text-hint"
        .value=${live(paste.text)}
        @input=${(event: Event) =>
          setPaste(pane, { text: (event.target as HTMLTextAreaElement).value, columns: undefined, result: "" })}
      ></textarea>
      <span class="hint" id="paste-text-hint"
        >Columns parted by tabs or commas: plot, species, DBH in inches, 16-ft logs, count. A column headed Height is
        total height in feet. A row with only a plot is an empty one. A list of points, as Share copies it, comes
        first.</span
      >
    </div>
    ${pasted ? html`${found(pasted)} ${pasted.kind === "points" ? nothing : pastePreview(pane, pasted)} ${notes(pasted)} ${pasteDestination(pane, pasted, job)}` : nothing}
  `;
}

const done = (pane: Pane, result: string) =>
  message({
    kind: "done",
    text: result,
    actions: [
      actionButton({ label: "Check", onPress: () => pane.go("check") }),
      actionButton({ label: "Stand", onPress: () => pane.go("stand") }),
    ],
  });

const found = ({ kind, trees, plots, rejects }: PastedTally) =>
  kind === "points"
    ? html`<p class="answer" role="status">
        A list of ${plots.length} ${plots.length === 1 ? "point" : "points"}, without
        trees${rejects.length > 0 ? `, ${rejects.length} left out` : ""}. Paste its trees next.
      </p>`
    : html`<p class="answer" role="status">
        ${trees.length} ${trees.length === 1 ? "line" : "lines"} of trees on ${plots.length}
        ${plots.length === 1 ? "point" : "points"}${rejects.length > 0 ? `, ${rejects.length} left out` : ""}.
      </p>`;

function notes({ rejects, warnings }: PastedTally) {
  return html`${noteList("Left out", rejects)} ${noteList("Taken, but look again", warnings)}`;
}

const noteList = (title: string, list: readonly LineNote[]) =>
  list.length === 0
    ? nothing
    : html`<h2>${title} (${list.length})</h2>
        <ul class="notes">
          ${list
            .slice(0, NOTES_SHOWN)
            .map(
              ({ line, text, says }) =>
                html`<li>
                  ${line > 0 ? html`<strong>Line ${line}</strong> <span class="unit">${text}</span><br />` : nothing}${says}
                </li>`,
            )}
        </ul>
        ${list.length > NOTES_SHOWN ? html`<p class="hint">and ${list.length - NOTES_SHOWN} more.</p>` : nothing}`;
