import { html, nothing } from "lit";
import { figure, roundedTo } from "../figures";
import type { Estimated } from "../job/readStand";

export interface EstimateLine {
  readonly title: string;
  readonly unit: string;
  readonly estimated: Estimated;
}

/** Number and margin as one object, and the range below them. */
function estimateLine({ title, unit, estimated }: EstimateLine) {
  const { value, margin, percent, low, high } = estimated;
  const show = roundedTo(margin);
  return html`<div class="estimate">
    <dt>${title}</dt>
    <dd>
      <span class="number"
        ><strong>${show(value)}</strong>${margin === null ? nothing : html` ± ${show(margin)}`}
        <span class="unit">${unit}</span></span
      >
      <span class="range"
        >${
          low === null || high === null
            ? "no margin yet: it takes 2 points"
            : `${show(low)} to ${show(high)}${percent === null ? "" : `, give or take ${figure(percent)} %`}`
        }</span
      >
    </dd>
  </div>`;
}

/** Several numbers, each with its margin. */
export const estimateLines = (lines: readonly EstimateLine[]) =>
  html`<dl class="estimates">${lines.map(estimateLine)}</dl>`;
