import { html, nothing } from "lit";
import type { PastedTally } from "../../workbook/pastedTally";
import { usualSettings } from "../../workbook/settings";
import { plot as plotHeading } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { message } from "../components/message";
import { radioField } from "../components/radioField";
import { textField } from "../components/textField";
import { samePlot, treesOn, type Job } from "../job/job";
import type { Pane } from "../pane";
import { setPaste } from "../paste/setPaste";
import { addToCruise, startWith } from "../paste/takeIn";

/** Where a pasted tally goes: into the cruise that is open, or into a workbook of its own. */
export function pasteDestination(pane: Pane, pasted: PastedTally, job: Job | undefined) {
  const { paste } = pane.state;
  const goes = job ? paste.goes : "new";
  return html`<h2>Where it goes</h2>
    ${
      job
        ? radioField({
            name: "paste-goes",
            label: pasted.kind === "points" ? "These points" : "These trees",
            options: [
              { id: "add", title: `Add to ${job.stand}` },
              { id: "new", title: "Start a new cruise with them" },
            ],
            value: goes,
            onChoose: (id) => setPaste(pane, { goes: id === "new" ? "new" : "add" }),
          })
        : nothing
    }
    ${goes === "add" && job ? adding(pane, pasted, job) : starting(pane, pasted)}`;
}

function adding(pane: Pane, pasted: PastedTally, job: Job) {
  const taken = pasted.plots
    .map((row) => String(row[plotHeading.plot] ?? ""))
    .filter((name) => job.plots.some((plot) => samePlot(plot.name, name)) && treesOn(job, name).length > 0);
  return html`${
    taken.length > 0 && pasted.kind === "trees"
      ? message({
          kind: "warning",
          text: `${taken.length === 1 ? "Point" : "Points"} ${taken.join(", ")} already ${taken.length === 1 ? "has" : "have"} trees. These are added to them, so a tally pasted twice counts twice.`,
        })
      : nothing
  }
  ${actionButton({
    label: "Add to this cruise",
    kind: "main",
    disabled: pasted.plots.length === 0,
    onPress: () => void addToCruise(pane, job, pasted),
  })}`;
}

function starting(pane: Pane, pasted: PastedTally) {
  const { paste } = pane.state;
  const [acres, gauge] = [Number(paste.acres), Number(paste.gauge)];
  const problem = (typed: string, value: number, what: string) =>
    typed.trim() === "" || value > 0 ? undefined : `${what} should be a number above 0. You have "${typed}".`;
  return html`
    ${textField({ id: "paste-stand", label: "Stand", value: paste.stand, onInput: (stand) => setPaste(pane, { stand }) })}
    <div class="pair">
      ${textField({
        id: "paste-acres",
        label: "Acres",
        unit: "ac",
        numeric: true,
        value: paste.acres,
        onInput: (value) => setPaste(pane, { acres: value }),
        problem: problem(paste.acres, acres, "Acres"),
      })}
      ${textField({
        id: "paste-gauge",
        label: "Gauge (BAF)",
        unit: "ft²/ac",
        numeric: true,
        value: paste.gauge,
        onInput: (value) => setPaste(pane, { gauge: value }),
        problem: problem(paste.gauge, gauge, "The basal area factor"),
      })}
    </div>
    ${actionButton({
      label: "Start a cruise with it",
      kind: "main",
      disabled: !(acres > 0 && gauge > 0) || pasted.plots.length === 0,
      onPress: () =>
        void startWith(pane, pasted, {
          ...usualSettings,
          stand: paste.stand.trim() || usualSettings.stand,
          acres,
          size: gauge,
        }),
    })}
    ${acres > 0 && gauge > 0 ? nothing : html`<p class="hint">Type the acres and the gauge first.</p>`}
  `;
}
