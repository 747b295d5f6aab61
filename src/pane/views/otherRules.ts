import { html } from "lit";
import { actionButton } from "../components/actionButton";
import { section } from "../components/section";
import { figure } from "../figures";
import type { Job } from "../job/job";
import type { MeasuredLog } from "../logs/scaledBy";
import { totalsByRule, type RuleTotal } from "../logs/scaleFigures";
import type { Pane } from "../pane";

/** The same logs under the other rules, with the finding first. */
export function otherRules(pane: Pane, logs: readonly MeasuredLog[], { scale }: Job) {
  const totals = totalsByRule(logs, scale);
  return section(
    "Same logs under other rules",
    html`<p class="meaning">${finding(totals)}</p>
      <dl class="totals">
        ${totals.map(
          (one) =>
            html`<div class=${one.title === scale.rule ? "chosen" : ""}>
              <dt>${one.title}${one.title === scale.rule ? " (this sheet)" : ""}</dt>
              <dd>${figure(one.net)} bf${lacking(one)}</dd>
            </div>`,
        )}
      </dl>
      <p class="hint">A price per MBF belongs to its rule: compare offers in dollars for the same logs.</p>
      ${actionButton({ label: "Compare rules", onPress: () => pane.go("rules") })}`,
  );
}

function finding(totals: readonly RuleTotal[]): string {
  const full = totals.filter(({ without, net }) => without === 0 && net > 0).sort((one, other) => one.net - other.net);
  const [least, most] = [full[0], full.at(-1)];
  if (!least || !most || least === most) return "Not every rule has a value for each of these logs.";
  return `From ${figure(least.net)} bf by ${least.title} to ${figure(most.net)} by ${most.title}: ${figure(100 * (most.net / least.net - 1))} % more for the same wood.`;
}

/** Logs that a rule has no value for, in words; "" when it has one for all. */
export const lacking = ({ without }: RuleTotal) => (without > 0 ? `, ${without} without a value` : "");
