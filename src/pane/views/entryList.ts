import { html, nothing, type TemplateResult } from "lit";
import { actionButton } from "../components/actionButton";
import { message } from "../components/message";
import type { EntryDesk } from "../entry/entryDesk";
import type { EntryState, PendingEntry, SavedEntry } from "../entry/entryState";
import type { Pane } from "../pane";

/** Lines shown below the box; the rest stands on the sheet. */
const LINES_SHOWN = 6;

export interface EntryListOptions<E> {
  /** Id of the box that lines are put back into. */
  readonly id: string;
  /** Name of the list. */
  readonly label: string;
  readonly none: string;
  readonly desk: EntryDesk<E>;
  readonly state: EntryState<E>;
  /** What the sheet says of a line, after its words. */
  readonly after: (saved: SavedEntry<E>) => TemplateResult;
}

/** The last lines, those not written yet first, each to be changed or removed. */
export function entryList<E>(pane: Pane, { id, label, none, desk, state, after }: EntryListOptions<E>) {
  const saved = desk.lines();
  const pending = state.pending.filter(({ entry }) => desk.kind.isHere(entry)).reverse();
  if (saved.length + pending.length === 0) return html`<p class="hint">${none}</p>`;
  const shown = saved.slice(0, Math.max(0, LINES_SHOWN - pending.length));
  const hidden = saved.length - shown.length;

  const pendingLine = ({ entry, written }: PendingEntry<E>) =>
    html`<li class="pending">
      <span>${desk.kind.say(entry)}</span><span class="hint">${written ? "saved" : "not saved yet"}</span>
    </li>`;
  const savedLine = (one: SavedEntry<E>) => {
    const words = desk.kind.say(one.entry);
    return html`<li class=${state.editing === one.row ? "editing" : ""}>
      <span>${words}${after(one)}</span>
      <span class="line-actions">
        ${actionButton({
          label: "Edit",
          kind: "quiet",
          name: `Edit ${words}`,
          onPress: () => {
            desk.edit(one);
            pane.focus(id);
          },
        })}
        ${actionButton({ label: "Remove", kind: "quiet", name: `Remove ${words}`, onPress: () => desk.remove(one) })}
      </span>
    </li>`;
  };

  return html`<ol class="lines" aria-label=${label}>
      ${pending.map(pendingLine)} ${shown.map(savedLine)}
    </ol>
    ${
      hidden > 0
        ? html`<p class="hint">
            ${hidden} earlier ${hidden === 1 ? "line is" : "lines are"} on the sheet ${desk.kind.sheet}.
          </p>`
        : nothing
    }`;
}

/** What a Check column says of a line, if it says anything. */
export const checked = (check: string) =>
  check ? html`<span class="doubt"><strong>Check:</strong> ${check}</span>` : nothing;

/** Why a write failed, and the two ways on; nothing while all is well. */
export function heldBack<E>({ held, pending }: EntryState<E>, desk: EntryDesk<E>) {
  if (!held) return nothing;
  const line = pending.find(({ id }) => id === held.id);
  return message({
    kind: "problem",
    text: `${held.why} Nothing you typed is lost.`,
    actions: [
      actionButton({ label: "Try again", onPress: () => desk.retry() }),
      actionButton({
        label: line ? "Back into the box" : "Leave it",
        kind: "quiet",
        onPress: () => desk.leaveOut(),
      }),
    ],
  });
}

/** The keys of a box, told below it. */
export const entryKeys = (finishes = "", measures = "") =>
  html`<details class="more">
    <summary>Keys</summary>
    <ul class="keys">
      <li><kbd>Enter</kbd> save the line</li>
      <li><kbd>Esc</kbd> clear the box, then back</li>
      <li><kbd>↑</kbd> <kbd>↓</kbd> in an empty box: change an earlier line</li>
      ${finishes ? html`<li><kbd>Alt</kbd>+<kbd>F</kbd> ${finishes}</li>` : nothing}
      ${measures ? html`<li><kbd>Alt</kbd>+<kbd>H</kbd> ${measures}</li>` : nothing}
      <li><kbd>Alt</kbd>+<kbd>U</kbd> undo the last line</li>
    </ul>
  </details>`;
