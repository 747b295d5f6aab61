import { html, nothing } from "lit";
import type { Estimate } from "../../core/cruise/estimate";
import { dataTable } from "../components/dataTable";
import { message } from "../components/message";
import { section } from "../components/section";
import { figure, roundedTo, withMargin } from "../figures";
import type { Pane } from "../pane";
import type { TreesResult } from "../solver/results";
import { staleNote } from "./staleNote";

/** How many standing trees the list takes, with the margin and the sizes. */
export function treesAnswer(pane: Pane) {
  const solved = pane.state.solved.trees;
  const { orders } = pane.state;
  if (solved?.result.kind !== "trees" || !orders) return nothing;
  const { result } = solved;
  const { classes, standing, never, sampled } = result;
  return section(
    "From the standing trees",
    html`${staleNote(solved, orders.trees)}
      <p class="answer"><strong>About ${treesIn(result)} trees</strong>, taken as they stand.</p>
      <p class="hint">
        ${sampled ? marginIn(result) : "Every tree was tallied, so no margin comes from the points."} Crook, rot and
        mishap come on top. ${standing ? `Some ${amountIn(standing, result)} such trees stand on the tract.` : nothing}
      </p>
      ${never.length > 0 ? message({ kind: "warning", text: `No tree that may be felled gives: ${never.join(", ")}. The number is for the rest of the list.` }) : nothing}
      ${dataTable(
        "Trees by diameter",
        ["DBH class, in", "The list takes", "Standing on the tract"],
        classes.map((one) => [
          String(one.dbh),
          figure(one.takes, 1),
          one.standing ? amountIn(one.standing, result) : "",
        ]),
        "Trees by diameter",
      )}`,
  );
}

const treesIn = ({ sampled, trees: { value, margin, marginPercent } }: TreesResult) =>
  sampled
    ? withMargin({ what: "Trees", value, margin, percent: marginPercent ?? null, low: null, high: null })
    : figure(value, 1);

const marginIn = ({ confidence, trees: { low, high, margin } }: TreesResult) =>
  `At ${figure(confidence)} % confidence, from ${roundedTo(margin)(low)} to ${roundedTo(margin)(high)}. The margin is ` +
  "that of the points of your cruise: how much what a tree gives differs from point to point.";

const amountIn = ({ value, margin }: Estimate, { sampled }: TreesResult) =>
  sampled ? `${figure(value)} ± ${figure(margin)}` : figure(value);
