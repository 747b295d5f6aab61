import { html, nothing } from "lit";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { emptyState } from "../components/emptyState";
import { onEntryKey } from "../entry/onEntryKey";
import { figure } from "../figures";
import { countedPlots, heightIs, nextPoint, samePlot, type Job } from "../job/job";
import type { Pane } from "../pane";
import { onSuggestionKey } from "../species/onSuggestionKey";
import { tallySuggestions } from "../species/tallySuggestions";
import { doubt } from "../tally/doubt";
import { runningFigures } from "../tally/runningFigures";
import { entryBox } from "./entryBox";
import { checked, entryKeys, entryList, heldBack } from "./entryList";

const BOX = "tally-line";

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
  const { tally: state } = pane.state;
  const { desk } = pane;
  const suggesting = tallySuggestions(pane, job);
  const keyed = (event: KeyboardEvent) =>
    onSuggestionKey(event, BOX, suggesting) ||
    onEntryKey(event, {
      desk,
      id: BOX,
      state: pane.state.tally,
      finish: () => desk.finish({ empty: false }),
      measure: () => measure(pane),
    });
  return html`<div class="tally" @keydown=${keyed}>
    ${pointLine(pane, job)}
    ${entryBox(pane, {
      id: BOX,
      ...wordsOf(heightIs(job)),
      suggesting,
      desk,
      state,
      doubt: ({ plot, tree }) => doubt(tree, plot, job),
    })}
    ${heldBack(state, desk)}
    <div class="actions tally-actions">
      ${actionButton({ label: "Finish point", altKey: "F", kind: "main", onPress: () => finish(pane, false) })}
      ${actionButton({ label: "No trees here", onPress: () => finish(pane, true) })}
      ${actionButton({ label: "Height", name: "Measure a height", altKey: "H", kind: "quiet", onPress: () => measure(pane) })}
      ${actionButton({ label: "Undo", altKey: "U", kind: "quiet", onPress: () => undo(pane) })}
    </div>
    ${nextPoint(job) === undefined ? html`<p class="hint">All ${job.plots.length} points are done.</p>` : nothing}
    ${entryList(pane, {
      id: BOX,
      label: "Last lines of this point",
      none: "No trees on this point yet.",
      desk,
      state,
      after: ({ row }) => saidOfTree(job, row),
    })}
    ${entryKeys("finish the point", "measure a height")}
  </div>`;
}

/** What the box asks for, by the height that Setup says is measured. */
const wordsOf = (height: "logs" | "feet") =>
  height === "logs"
    ? {
        label: "Species, DBH, logs",
        placeholder: "ro 14.3 2.5",
        hint: "Like ro 14.3 2.5, then h85 for a total height, x2 for two, c10 for 10 % cull, @27.5 for a taped distance, /note. A number alone repeats the species.",
      }
    : {
        label: "Species, DBH, total height",
        placeholder: "ro 14.3 85",
        hint: "Like ro 14.3 85 for 85 ft, then x2 for two, c10 for 10 % cull, @27.5 for a taped distance, /note. Logs are written 2.5logs. A number alone repeats the species.",
      };

/** Volume and check of a tree, as the sheet has them. */
function saidOfTree({ trees }: Job, row: number) {
  const saved = trees.find((one) => one.row === row);
  if (!saved) return html``;
  return html`${saved.volume === null ? nothing : html`<span class="volume"> · ${figure(saved.volume)} bf</span>`}
  ${saved.wood === null ? nothing : html`<span class="volume"> · ${figure(saved.wood, 1)} ft³</span>`}
  ${saved.accepted ? nothing : checked(saved.check)}`;
}

function pointLine(pane: Pane, job: Job) {
  const { plot, pending } = pane.state.tally;
  const trees = [
    ...pane.desk.lines().map(({ entry }) => entry.tree),
    ...pending.filter(({ entry }) => samePlot(entry.plot, plot)).map(({ entry }) => entry.tree),
  ];
  const running = runningFigures(trees, job, plot);
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

function finish(pane: Pane, empty: boolean): void {
  pane.desk.finish({ empty });
  pane.focus(BOX);
}

/** The line in the box stays as it is; what is measured goes behind it. */
function measure(pane: Pane): void {
  pane.set({ measure: { ...pane.state.measure, what: "height" } });
  pane.go("measure");
}

function undo(pane: Pane): void {
  pane.desk.undo();
  pane.focus(BOX);
}
