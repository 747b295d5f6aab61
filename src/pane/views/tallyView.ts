import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { emptyState } from "../components/emptyState";
import { figure } from "../figures";
import { countedPlots, nextPoint, samePlot, type Job, type SavedTree } from "../job/job";
import type { Pane } from "../pane";
import { doubt } from "../tally/doubt";
import { linesOf } from "../tally/linesOf";
import { onTallyKey } from "../tally/onTallyKey";
import { runningFigures } from "../tally/runningFigures";
import { sayTree } from "../tally/sayTree";
import { heldBack, tallyLines } from "./tallyLines";

/** One box for a tree a line, what will be saved in words, and the last lines of the point. Keyboard alone is enough. */
export function tallyView(pane: Pane) {
  const { job } = pane.state;
  if (job === undefined || job === "none" || job.plots.length === 0) {
    return emptyState(
      "No points yet. Plan the cruise, and its points stand here to be tallied. Or paste a tally you have.",
      html`<div class="actions">
        ${actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") })}
        ${actionButton({ label: "Paste a tally", onPress: () => pane.go("paste") })}
      </div>`,
    );
  }
  return html`<div class="tally" @keydown=${(event: KeyboardEvent) => onTallyKey(event, pane)}>
    ${pointLine(pane, job)} ${box(pane, job)} ${heldBack(pane)}
    <div class="actions tally-actions">
      ${actionButton({ label: "Finish point", altKey: "F", kind: "main", onPress: () => finish(pane, false) })}
      ${actionButton({ label: "No trees here", onPress: () => finish(pane, true) })}
      ${actionButton({ label: "Undo", altKey: "U", kind: "quiet", onPress: () => undo(pane) })}
    </div>
    ${nextPoint(job) === undefined ? html`<p class="hint">All ${job.plots.length} points are done.</p>` : nothing}
    ${tallyLines(pane, job, (saved) => edit(pane, saved))} ${keys}
  </div>`;
}

function pointLine(pane: Pane, job: Job) {
  const { plot, pending } = pane.state.tally;
  const trees = [
    ...linesOf(job, pane.state.tally).map(({ tree }) => tree),
    ...pending.filter((one) => samePlot(one.plot, plot)).map(({ tree }) => tree),
  ];
  const running = runningFigures(trees, job);
  const counted = countedPlots(job);
  const done = (name: string) => counted.some((one) => samePlot(one.name, name));
  return html`<div class="point-line">
    ${choiceField({
      id: "tally-point",
      label: `Point (of ${job.plots.length})`,
      options: job.plots.map(({ name }) => ({
        id: name,
        title: done(name) && !samePlot(name, plot) ? `${name} ✓` : name,
      })),
      value: plot,
      onChoose: pane.desk.choose,
    })}
    <dl class="running">
      <div>
        <dt>Trees</dt>
        <dd>${figure(running.trees, Number.isInteger(running.trees) ? 0 : 1)}</dd>
      </div>
      <div>
        <dt>Basal area</dt>
        <dd>
          ${running.basalArea === undefined ? "see Setup" : html`${figure(running.basalArea)} <span class="unit">ft²/ac</span>`}
        </dd>
      </div>
    </dl>
  </div>`;
}

function box(pane: Pane, job: Job) {
  const { text, editing, plot } = pane.state.tally;
  const line = pane.desk.read();
  const odd = line.kind === "tree" ? doubt(line.tree, plot, job) : "";
  return html`<div class="field tally-field">
    <label for="tally-line">${editing === undefined ? "Species, DBH, logs" : "Change this line"}</label>
    <span class="box">
      <input
        id="tally-line"
        type="text"
        autocomplete="off"
        autocapitalize="none"
        spellcheck="false"
        placeholder="ro 14.3 2.5"
        enterkeyhint="done"
        aria-describedby="tally-echo"
        .value=${live(text)}
        @input=${(event: Event) => pane.desk.type((event.target as HTMLInputElement).value)}
      />
      ${actionButton({ label: "Enter", name: "Enter this line", onPress: () => enter(pane) })}
    </span>
    <output id="tally-echo" class="echo echo-${line.kind}" for="tally-line" aria-live="polite">
      ${line.kind === "tree" ? html`= ${sayTree(line.tree, job.species)}` : line.kind === "unclear" ? line.because : emptyHint}
      ${odd ? html`<span class="doubt"><strong>Check:</strong> ${odd}</span>` : nothing}
    </output>
  </div>`;
}

const emptyHint = "Like ro 14.3 2.5, then x2 for two, c10 for 10 % cull, /note. A number alone repeats the species.";

const keys = html`<details class="more">
  <summary>Keys</summary>
  <ul class="keys">
    <li><kbd>Enter</kbd> save the line</li>
    <li><kbd>Esc</kbd> clear the box, then back</li>
    <li><kbd>↑</kbd> <kbd>↓</kbd> in an empty box: change an earlier line</li>
    <li><kbd>Alt</kbd>+<kbd>F</kbd> finish the point</li>
    <li><kbd>Alt</kbd>+<kbd>U</kbd> undo the last line</li>
  </ul>
</details>`;

function enter(pane: Pane): void {
  pane.desk.enter();
  pane.focus("tally-line");
}

function edit(pane: Pane, saved: SavedTree): void {
  pane.desk.edit(saved);
  pane.focus("tally-line");
}

function finish(pane: Pane, empty: boolean): void {
  pane.desk.finish({ empty });
  pane.focus("tally-line");
}

function undo(pane: Pane): void {
  pane.desk.undo();
  pane.focus("tally-line");
}
