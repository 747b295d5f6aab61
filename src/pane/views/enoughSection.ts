import { html, nothing } from "lit";
import { understatementAt } from "../../core/cruise/stoppingRule";
import { marginChart, marginFinding } from "../charts/marginChart";
import { chartFigure } from "../components/chartFigure";
import { dataTable } from "../components/dataTable";
import { section } from "../components/section";
import { figure } from "../figures";
import type { Job } from "../job/job";
import { marginPath, type MarginAfter } from "../job/marginPath";
import { measure, type StandAnswers } from "../job/readStand";

/** Two margins that a cell and we worked out from the same points. [%] */
const SAME = 1e-6;

/** Whether the points taken so far are enough, how the margin went as they came in, and what stopping early does to it. */
export function enoughSection(job: Job, stand: StandAnswers) {
  const { target, confidence, method } = job;
  if (method === "All") return nothing;
  const path = followed(marginPath(stand.points, confidence), stand);
  return section(
    "Is it enough?",
    html`<p class="more-points">${further(job, stand)}</p>
      ${
        path.length > 0
          ? chartFigure({
              finding: marginFinding({ path, target }),
              data: { path, target },
              draw: marginChart,
              table: dataTable(
                "Margin as points came in",
                ["Points", "Margin, %"],
                path.map(({ points, margin }) => [String(points), figure(margin, 1)]),
              ),
            })
          : nothing
      }
      <p class="hint">${warning(target)}</p>`,
  );
}

/** The path where it leads to the margin of the sheet; strata, clusters or strips have another, which points alone do not make. */
function followed(path: readonly MarginAfter[], { summary }: StandAnswers): readonly MarginAfter[] {
  const stated = (measure(summary, "Volume") ?? measure(summary, "Basal area"))?.percent ?? NaN;
  return Math.abs((path.at(-1)?.margin ?? NaN) - stated) < SAME ? path : [];
}

function further({ target }: Job, { morePoints, summary }: StandAnswers): string {
  if (morePoints === undefined || !measure(summary, "Volume")?.margin) return "";
  if (morePoints === 0) return `The volume is within the ${target} % you said you can live with.`;
  return `To reach ${target} %: about ${figure(morePoints)} more ${morePoints === 1 ? "point" : "points"}.`;
}

function warning(target: number): string {
  const { wanted, percent } = understatementAt(target);
  return `Decide the number of points beforehand where you can. Stopping as soon as the margin looks good flatters it: in a simulation the margin at which one stopped for ${wanted} % was ${percent} % smaller than the true one.`;
}
