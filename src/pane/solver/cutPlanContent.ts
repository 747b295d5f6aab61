import { RELEASED } from "../../core/reference/release";
import type { CutPlanContent } from "../../workbook/sheets/cutPlan";
import { figure } from "../figures";
import { answerOf, gapOf, moreIn, saidNamed } from "./sayCutList";
import type { CutListJob } from "./jobs";
import type { CutListResult, TreesResult } from "./results";
import type { SolverOrders } from "./readOrders";
import type { Solved } from "./solving";

/** What the sheet Cut plan holds of an answer, and of the one about standing trees where there is one. */
export function cutPlanContent(solved: Solved, trees: Solved | undefined, list: SolverOrders["list"]): CutPlanContent {
  const job = solved.job as CutListJob;
  const result = solved.result as CutListResult;
  const standing = trees?.result as TreesResult | undefined;
  return {
    stamp: [
      `Values, not formulas: worked out in the pane from ${job.logs.length} logs and ${job.pieces.length} lines of the cut list.`,
      `With ${list.spares} percent to spare, kerf ${job.kerf} in, live or cant sawing, goal ${job.goal}, version of ${RELEASED.date}.`,
    ],
    findings: [
      answerOf(result),
      `${gapOf(result)}${solved.stopped ? " The search was stopped before its end." : ""}`,
      ...(standing ? treesIn(standing) : []),
    ],
    inputs: { ...list.inputs, spares: list.spares, kerf: job.kerf },
    logs: result.logs.map(({ name, smallEnd, largeEnd, length, pieces, boardFeet }) => [
      name,
      smallEnd,
      largeEnd,
      length,
      saidNamed(pieces),
      boardFeet,
    ]),
    missing: result.missing.map(({ name, count }) => [name, count]),
    more: moreIn(result),
    trees: (standing?.classes ?? []).map(({ dbh, takes, standing: on }) => [
      dbh,
      takes,
      on?.value ?? null,
      standing?.sampled ? (on?.margin ?? null) : null,
    ]),
  };
}

function treesIn({ trees, confidence, never, sampled }: TreesResult): readonly string[] {
  const margin = sampled ? ` +/- ${figure(trees.margin, 1)}` : "";
  const left = never.length > 0 ? ` No such tree gives: ${never.join(", ")}.` : "";
  return [
    `Standing trees: about ${figure(trees.value, 1)}${margin}, taken as they stand.${left}`,
    sampled
      ? `The margin is that of the points of the cruise, at ${confidence} percent confidence.`
      : "Every tree was tallied, so no margin comes from the points.",
  ];
}
