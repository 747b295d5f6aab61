import { html, nothing } from "lit";
import { actionButton } from "../components/actionButton";
import { copyText } from "../components/copyText";
import { radioField } from "../components/radioField";
import { fileNameOf } from "../components/saveText";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { csvWorkbook, showCsv } from "../share/makeCsv";

/** The tally for other programs: as text to copy, or as a workbook of one sheet to save as such. */
export function shareCsv(pane: Pane, job: Job) {
  const { csv } = pane.state;
  const what = csv.what === "trees" ? "trees" : "points, empty ones too";
  return html`<h2>Tally as CSV text</h2>
    ${radioField({
      name: "share-csv",
      label: "For other programs",
      options: [
        { id: "trees", title: "The trees" },
        { id: "points", title: "The points, empty ones too" },
      ],
      value: csv.what,
      onChoose: (id) => pane.set({ csv: { what: id === "points" ? "points" : "trees", text: "", rows: 0 } }),
    })}
    <div class="actions">
      ${actionButton({ label: "Show the text", name: `Show the text of the ${what}`, onPress: () => void showCsv(pane, job, csv.what) })}
      ${actionButton({ label: "As a workbook", name: `As a workbook of one sheet: the ${what}`, onPress: () => void csvWorkbook(pane, job, csv.what) })}
    </div>
    ${
      csv.text === ""
        ? nothing
        : copyText({
            id: "share-csv-text",
            label: `${csv.rows} ${csv.rows === 1 ? "row" : "rows"}, units in the names`,
            text: csv.text,
            button: "Copy as CSV text",
            file: {
              fileName: fileNameOf(pane.state.share.leaveOutPrivate ? "" : job.stand, ` ${csv.what}.csv`),
              type: "text/csv",
            },
            say: pane.say,
          })
    }
    <p class="hint">
      Paste a tally takes both texts back: first the points, then the trees. In the workbook, use Save As, CSV UTF-8.
    </p>`;
}
