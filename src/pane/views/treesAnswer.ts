import { html, nothing } from "lit";
import { dataTable } from "../components/dataTable";
import { message } from "../components/message";
import { section } from "../components/section";
import { figure, roundedTo, withMargin } from "../figures";
import type { Pane } from "../pane";
import type { TreesResult } from "../solver/jobs";
import { staleNote } from "./staleNote";

/** How many standing trees the list takes, with the margin and the sizes. */
export function treesAnswer(pane: Pane) {
  const solved = pane.state.solved.trees;
  const { orders } = pane.state;
  if (solved?.result.kind !== "trees" || !orders) return nothing;
  const { result } = solved;
  const { trees, classes, standing, never, confidence } = result;
  return section(
    "From the standing trees",
    html`${staleNote(solved, orders.trees)}
      <p class="answer"><strong>About ${treesIn(result)} trees</strong>, taken as they stand.</p>
      <p class="hint">
        At ${figure(confidence)} % confidence, from ${roundedTo(trees.margin)(trees.low)} to
        ${roundedTo(trees.margin)(trees.high)}. The margin is that of the points of your cruise: how much what a tree
        gives differs from point to point. Crook, rot and mishap come on top.
        ${standing ? `Some ${figure(standing.value)} such trees stand on the tract, give or take ${figure(standing.margin)}.` : nothing}
      </p>
      ${never.length > 0 ? message({ kind: "warning", text: `No tree that may be felled gives: ${never.join(", ")}. They are left out of the number.` }) : nothing}
      ${dataTable(
        "Trees by diameter",
        ["DBH class, in", "The list takes", "Standing on the tract"],
        classes.map((one) => [
          String(one.dbh),
          figure(one.takes, 1),
          one.standing ? `${figure(one.standing.value)} ± ${figure(one.standing.margin)}` : "",
        ]),
      )}`,
  );
}

const treesIn = ({ trees: { value, margin, marginPercent } }: TreesResult) =>
  withMargin({ what: "Trees", value, margin, percent: marginPercent ?? null, low: null, high: null });
