import { html, nothing } from "lit";
import { actionButton } from "../components/actionButton";
import { message } from "../components/message";
import { figure } from "../figures";
import { samePlot, type Job, type SavedTree } from "../job/job";
import type { Pane } from "../pane";
import type { PendingTree } from "../tally/draft";
import { linesOf } from "../tally/linesOf";
import { sayTree } from "../tally/sayTree";

/** Lines shown below the box; the rest stands on the sheet. */
const LINES_SHOWN = 6;

/** The last lines of the point, those not written yet first. */
export function tallyLines(pane: Pane, job: Job, edit: (saved: SavedTree) => void) {
  const { tally } = pane.state;
  const saved = linesOf(job, tally);
  const pending = tally.pending.filter(({ plot }) => samePlot(plot, tally.plot)).reverse();
  if (saved.length + pending.length === 0) return html`<p class="hint">No trees on this point yet.</p>`;
  const shown = saved.slice(0, Math.max(0, LINES_SHOWN - pending.length));
  const hidden = saved.length - shown.length;
  return html`<ol class="lines" aria-label="Last lines of this point">
      ${pending.map((one) => pendingLine(one, job))} ${shown.map((one) => savedLine(pane, one, job, edit))}
    </ol>
    ${
      hidden > 0
        ? html`<p class="hint">${hidden} earlier ${hidden === 1 ? "line is" : "lines are"} on the sheet Trees.</p>`
        : nothing
    }`;
}

const pendingLine = ({ tree, written }: PendingTree, job: Job) =>
  html`<li class="pending">
    <span>${sayTree(tree, job.species)}</span><span class="hint">${written ? "saved" : "not saved yet"}</span>
  </li>`;

function savedLine(pane: Pane, saved: SavedTree, job: Job, edit: (saved: SavedTree) => void) {
  const words = sayTree(saved.tree, job.species);
  return html`<li class=${pane.state.tally.editing === saved.row ? "editing" : ""}>
    <span
      >${words}${saved.volume === null ? nothing : html`<span class="volume"> · ${figure(saved.volume)} bf</span>`}
      ${
        saved.check && !saved.accepted
          ? html`<span class="doubt"><strong>Check:</strong> ${saved.check}</span>`
          : nothing
      }</span
    >
    <span class="line-actions">
      ${actionButton({ label: "Edit", kind: "quiet", name: `Edit ${words}`, onPress: () => edit(saved) })}
      ${actionButton({
        label: "Remove",
        kind: "quiet",
        name: `Remove ${words}`,
        onPress: () => pane.desk.remove(saved),
      })}
    </span>
  </li>`;
}

/** Why a write failed, and the two ways on; nothing while all is well. */
export function heldBack(pane: Pane) {
  const { held, pending } = pane.state.tally;
  if (!held) return nothing;
  const line = pending.find(({ id }) => id === held.id);
  return message({
    kind: "problem",
    text: `${held.why} Nothing you typed is lost.`,
    actions: [
      actionButton({ label: "Try again", onPress: () => pane.desk.retry() }),
      actionButton({
        label: line ? "Back into the box" : "Leave it",
        kind: "quiet",
        onPress: () => pane.desk.leaveOut(),
      }),
    ],
  });
}
