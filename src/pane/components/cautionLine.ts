import { html } from "lit";
import type { Caution } from "../../core/reference/cautions";

/** One quiet line beside the number it concerns; the full text opens below it, or stands open at first. */
export const cautionLine = ({ line, text }: Caution, open: boolean) =>
  html`<details class="caution" ?open=${open}>
    <summary><span class="i" aria-hidden="true">i</span><span>${line}</span></summary>
    <p>${text}</p>
  </details>`;
