import { html, nothing, svg } from "lit";
import { live } from "lit/directives/live.js";

export interface CheckFieldOptions {
  readonly id: string;
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: () => void;
  /** How its line is drawn in a chart; the tick is then the chart's legend too. */
  readonly line?: { readonly stroke: string; readonly dash: string };
}

/** A tick with its label. */
export const checkField = ({ id, label, checked, onChange, line }: CheckFieldOptions) =>
  html`<label class="radio" for=${id}
    ><input id=${id} type="checkbox" .checked=${live(checked)} @change=${onChange} />${
      line
        ? html`<svg class="sample" viewBox="0 0 28 12" aria-hidden="true">
            ${svg`<line x1="0" y1="6" x2="28" y2="6" stroke=${line.stroke} stroke-width="3" stroke-dasharray=${line.dash} />`}
          </svg>`
        : nothing
    }<span>${label}</span></label
  >`;
