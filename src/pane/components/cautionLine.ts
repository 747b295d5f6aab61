import { html } from "lit";
import type { Caution } from "../../core/reference/cautions";

/** One quiet line beside the number it concerns; the full text opens below it. */
export const cautionLine = ({ line, text }: Caution) =>
  html`<details class="caution">
    <summary><span class="i" aria-hidden="true">i</span><span>${line}</span></summary>
    <p>${text}</p>
  </details>`;
