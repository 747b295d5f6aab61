import { html, nothing } from "lit";
import { actionButton } from "../components/actionButton";
import { section } from "../components/section";
import { emptyState } from "../components/emptyState";
import { estimateLines, type EstimateLine } from "../components/estimateLine";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import { findings } from "../job/findings";
import type { Job } from "../job/job";
import { jobTitle } from "../job/jobTitle";
import { measure, type StandAnswers } from "../job/readStand";
import { whyNoStand } from "../job/whyNoStand";
import type { Pane } from "../pane";
import { waysWithNotice } from "./compareView";
import { enoughSection } from "./enoughSection";
import { productLines } from "./productLines";
import { standCharts } from "./standCharts";
import { cautionOn } from "./cautionOn";

/** What the stand holds, each number with its margin, read from the workbook. */
export function standView(pane: Pane) {
  const { job, stand } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "What the stand holds will be here once points are tallied.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  if (!stand) return pane.state.unread ? html`` : waiting("Reading the sheet Stand");
  if (stand.summary.length === 0) {
    const odd = findings(job).some(({ accepted }) => accepted === "");
    return emptyState(
      whyNoStand(job, stand),
      actionButton({
        label: odd ? "Check" : "Tally trees",
        kind: "main",
        onPress: () => pane.go(odd ? "check" : "tally"),
      }),
    );
  }
  return html`
    <p class="job">${jobTitle(job)}: ${pointsCounted(stand)}, ${job.confidence} % confident</p>
    ${estimateLines(perAcre(stand))} ${cautionOn(pane, "Estimate")} ${section("Whole stand", wholeStand(job, stand))}
    <p class="meaning">
      If you did this cruise many times, about ${job.confidence} of 100 such ranges would hold the true figure.
    </p>
    ${enoughSection(job, stand)} ${standCharts(stand)}
    ${pane.state.products ? section("By product", productLines(pane.state.products, job)) : nothing}
    ${section("What it may bring", value(pane))}
  `;
}

const pointsCounted = ({ points }: StandAnswers) => {
  const empty = points.filter(({ trees }) => trees === 0).length;
  return `${figure(points.length)} points${empty > 0 ? ` (${empty} empty, counted)` : ""}`;
};

/** The measures in the order in which people ask for them, with the units that they are shown in. */
const measures = [
  { begins: "Volume", title: "Volume", unit: "bf per acre" },
  { begins: "Basal area", title: "Basal area", unit: "ft² per acre" },
  { begins: "Trees", title: "Trees", unit: "per acre" },
  { begins: "Quadratic", title: "Mean diameter (QMD)", unit: "in" },
] as const;

const perAcre = ({ summary }: StandAnswers): readonly EstimateLine[] =>
  measures.flatMap(({ begins, title, unit }) => {
    const estimated = measure(summary, begins);
    return estimated ? [{ title, unit, estimated }] : [];
  });

function wholeStand(job: Job, { tract, tractHarvest, tractLumber }: StandAnswers) {
  const lines: readonly EstimateLine[] = [
    { title: "All trees", unit: "bf", estimated: tract },
    { title: "Harvest (all but Take = No)", unit: "bf", estimated: tractHarvest },
    { title: "Lumber that harvest should saw out to", unit: "bf", estimated: tractLumber },
  ].flatMap(({ estimated, ...line }) => (estimated ? [{ ...line, estimated }] : []));
  if (lines.length === 0)
    return html`<p class="hint">
      ${job.acres ? "The sheet has no total yet." : "Give the acres on the sheet Setup."}
    </p>`;
  return estimateLines(lines);
}

function value(pane: Pane) {
  const { comparison } = pane.state;
  if (!comparison || comparison.ways.length === 0) {
    return html`<p class="hint">Fill in the sheet Prices, and three ways to sell stand here with their ranges.</p>`;
  }
  return html`${waysWithNotice(comparison)}
  ${actionButton({ label: "Compare", name: "Compare the ways to sell", onPress: () => pane.go("compare") })}`;
}
