import { html, nothing } from "lit";
import { PAPER_CAUTIONS, type SawPaper } from "../../workbook/sheets/sawPaper";
import { cautionLine } from "../../workbook/sheets/sheetParts";
import { actionButton } from "../components/actionButton";
import { endViewDrawing } from "../components/endViewDrawing";
import type { Job } from "../job/job";
import type { SawingAnswers } from "../job/readSawing";
import type { Pane } from "../pane";
import type { EndView } from "../sawing/endView";
import { planToTake } from "../sawing/planToTake";
import { sawPaperOf } from "../sawing/sawPaperOf";

/** What the printer gets of the view: the plan with its end view and nothing of the pane; never seen on the screen. */
export const sawPaper = ({ title, facts, headings, cuts, stamp }: SawPaper, endView: EndView) =>
  html`<section class="paper" aria-hidden="true">
    <h1>${title}</h1>
    <div class="paper-top">
      <ul>
        ${facts.filter((fact) => fact !== "").map((fact) => html`<li>${fact}</li>`)}
      </ul>
      ${endView.boards.length > 0 ? endViewDrawing({ endView, marked: [], name: "End view" }) : nothing}
    </div>
    <table>
      <thead>
        <tr>
          ${headings.map((heading) => html`<th>${heading}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${cuts.map(
          (row) =>
            html`<tr>
              ${row.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
    <p>${[stamp, ...PAPER_CAUTIONS.map(cautionLine)].join(" ")}</p>
  </section>`;

/** The plan on paper: from here where the program around the pane can print, and as a file anywhere. */
export function printing(pane: Pane, job: Job, sawing: SawingAnswers) {
  return html`<div class="actions">
      ${actionButton({ label: "Print this plan", onPress: () => print() })}
      ${actionButton({
        label: "As its own workbook",
        name: "As its own workbook: the plan to print",
        onPress: () => void planToTake(pane, sawPaperOf(sawing, job.logs), sawing.endView),
      })}
    </div>
    <p class="hint">
      Both have the settings in order and the drawing. Where nothing happens at Print, as in Excel on a Mac, print the
      workbook.
    </p>`;
}
