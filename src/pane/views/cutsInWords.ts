import { html, nothing } from "lit";
import { figure } from "../figures";
import { settingSaid, type SawStep } from "../sawing/sawSteps";

/** The cut list as a list: all that the drawing shows, cut by cut, for who reads it or has it read. */
export const cutsInWords = (caption: string, steps: readonly SawStep[], unit: string) =>
  html`<details class="figures">
    <summary>Read as a list</summary>
    <ol class="cut-list" aria-label=${caption}>
      ${steps.map((step) => html`<li value=${step.number}>${line(step, unit)}</li>`)}
    </ol>
  </details>`;

function line(step: SawStep, unit: string) {
  const { turn, reading, frees, boards, boardFeet, shown } = step;
  const set = shown.endsWith("marks") ? "" : ` ${unit}`;
  const where =
    reading === null ? (turn === "edge" ? "At the edger" : "Left on the bed") : `${settingSaid(step)}${set}`;
  return html`<strong>${where}</strong>:
    ${frees}${
      boards.length === 0
        ? nothing
        : html`<span class="hint"
            >, ${boards.length === 1 ? "board" : "boards"}
            ${boards.join(", ")}${boardFeet === null ? "" : `, ${figure(boardFeet, 1)} bf`}</span
          >`
    }${reading !== null && turn !== "none" ? html`<span class="hint turn">Turn: ${turn}</span>` : nothing}`;
}
