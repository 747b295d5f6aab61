import { html, nothing } from "lit";
import { FIELD_TALLY } from "../../workbook/sheets/fieldTally";
import { POINT_LIST } from "../../workbook/sheets/pointList";
import { actionButton } from "../components/actionButton";
import { copyText } from "../components/copyText";
import { message } from "../components/message";
import { fileNameOf } from "../components/saveText";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { gpxText } from "../points/gpxText";
import { layFieldTally, tallyOfItsOwn } from "../points/fieldTally";
import { placingInWords } from "../points/placing";
import type { PointsModel } from "../points/pointsModel";
import { putPoints } from "../points/putPoints";
import { gpxPoints } from "../points/walk";

/** Writing the points, and what is taken along to the woods. */
export function pointsPaper(pane: Pane, job: Job, model: PointsModel) {
  return html`${writing(pane, model)} ${model.shown.length > 0 ? receiver(pane, job, model) : nothing}
  ${fieldTally(pane, job, model)}`;
}

function writing(pane: Pane, model: PointsModel) {
  const { proposal, proposed, placing } = model;
  const wrong = Object.keys(proposal.problems).length > 0;
  const { changed, text, reading } = pane.state.layout;
  const unread = text.trim() !== "" && reading === undefined;
  const ready = proposal.points.length > 0 && !wrong && !unread;
  const goTo = actionButton({
    label: "Go to Point list",
    onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: POINT_LIST, at: "A1" })),
  });
  if (proposal.outline.length === 0) return nothing;
  return html`<h2>Write and print</h2>
    ${
      proposed
        ? html`<ul class="notes">
            ${placingInWords(placing).map((said) => html`<li>${said}</li>`)}
            <li>No tree and no point that was entered is changed.</li>
          </ul>`
        : nothing
    }
    ${proposed && placing.kept.length > 0 ? message({ kind: "note", text: layoutReplaced(model) ? OTHER_MAP : TWO_GRIDS }) : nothing}
    <div class="actions">
      ${
        proposed || changed
          ? actionButton({
              label: proposed ? "Put the points on the sheet Points" : "Write Outline and Point list anew",
              kind: "main",
              disabled: !ready,
              onPress: () => void putPoints(pane, model),
            })
          : nothing
      }
      ${goTo}
    </div>
    <p class="hint">Point list is laid out to print: the walk with bearings, feet, chains and paces.</p>`;
}

/** True when points that stay were placed on the map of another outline. */
const layoutReplaced = ({ proposal, saved }: PointsModel) =>
  saved.corners.length > 0 &&
  (saved.latitude !== proposal.layout.latitude ||
    saved.longitude !== proposal.layout.longitude ||
    saved.source !== proposal.layout.source);

const OTHER_MAP =
  "The points that stay have their East and North on the map of the outline before; on this one they would lie elsewhere. A tract of its own is better a workbook of its own.";

const TWO_GRIDS =
  "Points of two draws in one cruise are fair only if each grid covered the whole tract. Do not add a grid to where the first points came out poor.";

function receiver(pane: Pane, job: Job, { shown, proposal }: PointsModel) {
  const points = gpxPoints(shown, proposal.layout);
  return html`<details class="more">
    <summary>For a satellite receiver (GPX)</summary>
    ${
      points.length === 0
        ? html`<p class="hint">
            A receiver needs latitudes and longitudes. Paste the outline as such, or tell those of 0, 0 under Compass,
            paces and receiver.
          </p>`
        : copyText({
            id: "points-gpx",
            label: "Your points as a file for the receiver",
            text: gpxText(job.stand, points),
            button: "Copy as GPX text",
            file: { fileName: fileNameOf(job.stand, ".gpx"), type: "application/gpx+xml" },
            say: pane.say,
          })
    }
  </details>`;
}

const fieldTally = (pane: Pane, job: Job, model: PointsModel) =>
  html`<h2>Field tally</h2>
    <p>
      Sheets to fill in, two points to a page, with the limiting distances of your gauge, to the center and to the face.
      No formula of the add-in is in them, so a tablet takes them too.
    </p>
    <div class="actions">
      ${actionButton({
        label: "Go to Field tally",
        onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: FIELD_TALLY, at: "A1" })),
      })}
      ${actionButton({ label: "Make it anew", name: "Make it anew: the field tally", onPress: () => void layFieldTally(pane, job) })}
      ${actionButton({
        label: "As its own workbook",
        name: "As its own workbook: the field tally",
        onPress: () => void tallyOfItsOwn(pane, job, model),
      })}
    </div>`;
