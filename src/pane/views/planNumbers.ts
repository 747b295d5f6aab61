import { html, nothing } from "lit";
import { Problem } from "../../core/basis/problem";
import { acres } from "../../core/basis/units";
import { plotGuides, plotsByAcres } from "../../core/cruise/plotsByAcres";
import { figure } from "../figures";
import type { PlanReading } from "../plan/readPlan";

/** Three answers to one question, side by side, and why they differ. */
export function planNumbers({ needed, tract }: Pick<PlanReading, "needed" | "tract">, target: string) {
  const guides =
    tract === undefined ? [] : plotGuides.map((guide) => ({ title: guide.title, ...byGuide(tract, guide) }));
  return html`<dl class="three-numbers">
      <div class="chosen">
        <dt>For your margin of ${target} %</dt>
        <dd>${needed === undefined ? "fill in the boxes above" : html`<strong>${figure(needed)}</strong> points`}</dd>
      </div>
      ${guides.map(
        ({ title, points, because }) =>
          html`<div>
            <dt>${title}</dt>
            <dd>${points === undefined ? because : html`<strong>${figure(points)}</strong> points`}</dd>
          </div>`,
      )}
    </dl>
    ${tract === undefined ? html`<p class="hint">Type the acres to see what two printed guides ask for.</p>` : nothing}
    <details class="why">
      <summary>Why do they differ?</summary>
      <p>
        The first goes by your stand: a mean of n points is off by about t × CV / √n, and this is the smallest n for
        which that is not more than your margin, with t read again for each n. The more the points differ, and the
        smaller the margin, the more points. The acres do not come into it.
      </p>
      <p>
        The other two go by acres alone and promise no margin. The NRCS minimum is the least for a low-intensity
        inventory. The teaching rule is what a class is told to take, and stops at 200 acres.
      </p>
    </details>`;
}

function byGuide(tract: number, guide: (typeof plotGuides)[number]) {
  try {
    return { points: plotsByAcres(acres(tract), guide), because: "" };
  } catch (problem) {
    if (problem instanceof Problem) return { points: undefined, because: problem.message };
    throw problem;
  }
}
