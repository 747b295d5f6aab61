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
  const { value, margin } = estimated;
  const show = roundedTo(margin);
  return html`<div class="estimate">
    <dt>${title}</dt>
    <dd>
      <span class="number"
        ><strong>${show(value)}</strong>${margin === null ? nothing : html` ± ${show(margin)}`}
        <span class="unit">${unit}</span></span
      >
      <span class="range">${rangeOf(estimated)}</span>
    </dd>
  </div>`;
}

/** The range in words; one that would begin below nothing is no range to plan with, and says so. */
export function rangeOf({ margin, percent, low, high, complete }: Estimated): string {
  if (complete) return "every tree tallied: a margin is not applicable";
  if (low === null || high === null) return "no margin yet: it takes 2 points";
  const show = roundedTo(margin);
  const range = `${show(low)} to ${show(high)}${percent === null ? "" : `, give or take ${figure(percent)} %`}`;
  if (low >= 0) return range;
  return `${range}. Less than nothing cannot stand there: the sample is too small for a range that makes sense.`;
}

/** Several numbers, each with its margin. */
export const estimateLines = (lines: readonly EstimateLine[]) =>
  html`<dl class="estimates">${lines.map(estimateLine)}</dl>`;
