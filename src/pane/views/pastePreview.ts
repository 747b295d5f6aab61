import { html } from "lit";
import { live } from "lit/directives/live.js";
import { pastedFields, type PastedField } from "../../workbook/pastedColumns";
import type { PastedTally } from "../../workbook/pastedTally";
import type { Pane } from "../pane";
import { pastedRows } from "../paste/readPasted";
import { setPaste } from "../paste/setPaste";

const ROWS_SHOWN = 10;

const fieldTitles: Readonly<Record<PastedField, string>> = {
  plot: "Plot",
  species: "Species",
  dbh: "DBH, in",
  logs: "Logs, 16 ft",
  count: "Count",
  take: "Take",
  cull: "Cull, %",
  note: "Note",
  height: "Total height, ft",
  distance: "Distance, ft",
  accepted: "Accepted because",
};

/** The first rows as they were pasted, with a menu over each column that says what it holds. */
export function pastePreview(pane: Pane, { match }: PastedTally) {
  const rows = pastedRows(pane.state.paste.text);
  const shown = rows.slice(match.headingRows, match.headingRows + ROWS_SHOWN);
  const columns = Array.from({ length: Math.max(0, ...rows.map((row) => row.length)) }, (_, place) => place);
  const holds = (place: number) => pastedFields.find((field) => match.columns[field] === place) ?? "";
  const choose = (place: number, field: string) => {
    const others = Object.entries(match.columns).filter(([one, at]) => at !== place && one !== field);
    setPaste(pane, { columns: { ...Object.fromEntries(others), ...(field !== "" && { [field]: place }) } });
  };
  return html`<h2>The first rows</h2>
    <div class="scroll preview" tabindex="0" role="region" aria-label="The first rows, with what each column holds">
      <table>
        <thead>
          <tr>
            ${columns.map(
              (place) =>
                html`<th scope="col">
                  <select
                    aria-label="Column ${place + 1}${match.headings[place] ? `, ${match.headings[place]}` : ""} holds"
                    .value=${live(holds(place))}
                    @change=${(event: Event) => choose(place, (event.target as HTMLSelectElement).value)}
                  >
                    <option value="" ?selected=${holds(place) === ""}>not used</option>
                    ${pastedFields.map(
                      (field) =>
                        html`<option value=${field} ?selected=${holds(place) === field}>${fieldTitles[field]}</option>`,
                    )}
                  </select>
                </th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${shown.map(
            (row) =>
              html`<tr>
                ${columns.map((place) => html`<td>${row[place] ?? ""}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}
