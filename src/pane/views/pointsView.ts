import { html, nothing } from "lit";
import { MOVE_NOTHING } from "../../workbook/sheets/pointList";
import { actionButton } from "../components/actionButton";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { mapDrawing } from "../components/mapDrawing";
import { message } from "../components/message";
import type { Pane } from "../pane";
import { pointsModel, type PointsModel } from "../points/pointsModel";
import { walkHeadings, walkRows, wayToFirst } from "../points/walk";
import { pointsGrid } from "./pointsGrid";
import { pointsOutline } from "./pointsOutline";
import { pointsPaper } from "./pointsPaper";

/** Where the points lie: an outline, a grid on it from a start picked by chance, a map, and what is taken along. */
export function pointsView(pane: Pane) {
  const { job, layout, mapped } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "The points can be laid out on a map here once there is a cruise.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const model = pointsModel(job, mapped, layout);
  return html`
    ${layout.result ? message({ kind: "done", text: layout.result }) : nothing} ${pointsOutline(pane, job, model)}
    ${model.proposal.outline.length > 0 ? pointsGrid(pane, model) : nothing} ${map(model)}
    ${pointsPaper(pane, job, model)}
  `;
}

function map(model: PointsModel) {
  const { shown, proposal } = model;
  if (shown.length === 0) return nothing;
  const first = wayToFirst(shown, proposal.layout);
  return html`
    <h2>Map</h2>
    <p class="answer">${inWords(model)}</p>
    ${mapDrawing({
      outline: proposal.outline,
      points: shown,
      name: `Map of ${shown.length} points, numbered in walking order, north up. The list below tells all of it.`,
    })}
    <p class="hint">
      Filled: visited. The dashed line is the way to walk; small slanted numbers are the corners of the outline.
    </p>
    ${message({ kind: "note", text: MOVE_NOTHING })} ${first ? html`<p class="hint">${first}</p>` : nothing}
    ${dataTable("The points in walking order, and the way from each to the next", walkHeadings, walkRows(shown, proposal.layout), "Read as a list")}
  `;
}

/** Whether the map shows what stands on the sheet, and how its points sit with those planned. */
function inWords({ shown, proposed, planned }: PointsModel) {
  const points = `${shown.length} ${shown.length === 1 ? "point" : "points"}`;
  if (!proposed) return `${points} on the sheet Points.`;
  if (shown.length === planned) return html`<strong>${points}</strong> fall inside, as planned. Not written yet.`;
  return html`<strong>${points}</strong> ${shown.length === 1 ? "falls" : "fall"} inside; the sheet Points has
    ${planned}. The number changes a little with the start: do not draw again for it. Not written yet.`;
}
