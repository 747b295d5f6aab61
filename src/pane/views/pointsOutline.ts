import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { named } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { message } from "../components/message";
import { figure } from "../figures";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { cornerUnits, type CornerUnit } from "../points/outlineReading";
import type { PointsModel } from "../points/pointsModel";
import { setOutline } from "../points/setLayout";

/** Acres that differ by more than this share are worth a word. A choice of ours. */
const APART = 0.05;

/** The outline: the one that the workbook holds, or another that is pasted or taken from a file. */
export function pointsOutline(pane: Pane, job: Job, model: PointsModel) {
  const { layout } = pane.state;
  const has = model.saved.corners.length > 0;
  return html`
    <h2>Outline of the tract</h2>
    ${has && layout.text === "" ? used(model) : nothing}
    ${
      has
        ? html`<details class="more" ?open=${layout.text !== ""}>
            <summary>Paste another outline</summary>
            ${boxes(pane)}
          </details>`
        : boxes(pane)
    }
    ${layout.unreadable ? message({ kind: "problem", text: layout.unreadable }) : nothing}
    ${(layout.reading?.notes ?? []).map((text) => message({ kind: "note", text }))}
    ${model.proposal.problem ? message({ kind: "problem", text: model.proposal.problem }) : nothing}
    ${model.proposal.acres === undefined || layout.unreadable ? nothing : acresCompared(pane, job, model)}
  `;
}

const used = ({ saved }: PointsModel) =>
  html`<p>
    ${saved.corners.length} corners on the sheet
    Outline${saved.source ? `: ${saved.source.charAt(0).toLowerCase()}${saved.source.slice(1)}` : ""}.
  </p>`;

function boxes(pane: Pane) {
  const { text, unit } = pane.state.layout;
  return html`<div class="field">
      <label for="points-text">Corners in order around the tract, one a line; or GPX, KML or GeoJSON</label>
      <textarea
        id="points-text"
        rows="5"
        spellcheck="false"
        aria-describedby="points-text-hint"
        .value=${live(text)}
        @input=${(event: Event) => void setOutline(pane, (event.target as HTMLTextAreaElement).value, unit)}
      ></textarea>
      <span class="hint" id="points-text-hint"
        >Such as 0, 0 then 660, 0 then 660, 660: feet east and north of one corner. Or latitude, longitude from a map or
        a receiver.</span
      >
    </div>
    ${choiceField({
      id: "points-unit",
      label: "These numbers are",
      options: cornerUnits,
      value: unit,
      onChoose: (id) => void setOutline(pane, text, id as CornerUnit),
    })}
    <div class="field">
      <label for="points-file">Or take them from a file</label>
      <input
        id="points-file"
        type="file"
        accept=".gpx,.kml,.geojson,.json,.txt,.csv"
        @change=${(event: Event) => void fromFile(pane, event.target as HTMLInputElement, unit)}
      />
    </div>`;
}

async function fromFile(pane: Pane, input: HTMLInputElement, unit: CornerUnit): Promise<void> {
  const [file] = input.files ?? [];
  if (!file) return;
  await pane.run("Reading the file", async () => setOutline(pane, await file.text(), unit));
  input.value = "";
}

/** The acres of the outline beside those on Setup; a difference is a mistake in one of the two. */
function acresCompared(pane: Pane, job: Job, { proposal: { acres = 0, outline } }: PointsModel) {
  const corners = `${outline.length} corners`;
  const size = `${figure(acres, 1)} acres`;
  if (job.acres === null || job.acres <= 0) return html`<p class="answer">${corners}, <strong>${size}</strong>.</p>`;
  const off = acres / job.acres - 1;
  if (Math.abs(off) <= APART) {
    return html`<p class="answer">
      ${corners}, <strong>${size}</strong>; Setup has ${figure(job.acres, 1)}, ${figure(100 * Math.abs(off), 1)} %
      apart.
    </p>`;
  }
  const use = Number(acres.toFixed(1));
  return message({
    kind: "warning",
    text: `The outline has ${size}, but Setup has ${figure(job.acres, 1)}. One of them is wrong, or the unit of the corners is.`,
    actions: [
      actionButton({
        label: `Set acres to ${use}`,
        onPress: () =>
          void pane.run("Changing the acres", async () => {
            await pane.host.writeNames({ [named.acres]: use });
            await pane.refresh();
          }),
      }),
    ],
  });
}
