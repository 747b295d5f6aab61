import { html, nothing } from "lit";
import { styleMap } from "lit/directives/style-map.js";
import { COMPARE } from "../../workbook/sheets/compare";
import { PRICES_SHEET } from "../../workbook/sheets/prices";
import { actionButton } from "../components/actionButton";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { figure } from "../figures";
import type { Comparison, Way } from "../job/readComparison";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";

/** The ways to sell, side by side with their ranges, as the sheet Compare has them. */
export function compareView(pane: Pane) {
  const { comparison, job } = pane.state;
  const go = (sheet: string, label: string) =>
    actionButton({
      label,
      onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet, at: "A1" })),
    });
  if (job === undefined || job === "none") {
    return emptyState(
      "Three ways to sell will stand here side by side once there is a cruise and a few prices.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  if (!comparison || comparison.ways.length === 0) {
    return emptyState(
      "No comparison yet: fill in the prices and the costs on the sheet Prices.",
      go(PRICES_SHEET, "Go to Prices"),
    );
  }
  return html`
    ${waysWithNotice(comparison)} ${comparison.verdict ? html`<p class="meaning">${comparison.verdict}</p>` : nothing}
    <div class="actions">${go(COMPARE, "Go to Compare")} ${go(PRICES_SHEET, "Go to Prices")}</div>
    ${cautionOn(pane, "Prices")} ${cautionOn(pane, "Tax")} ${cautionOn(pane, "Forester")}
  `;
}

/** The ways, under the words that the prices carry until they have a source and a date. */
export const waysWithNotice = ({ ways, priceNotice }: Comparison) =>
  html`${priceNotice ? message({ kind: "warning", text: `Prices: ${priceNotice}` }) : nothing} ${waysList(ways)}`;

/** Each way with its value in figures, and a bar from low to high on one scale. */
function waysList(ways: readonly Way[]) {
  const numbers = ways.flatMap(({ value, low, high }) => [value, low ?? value, high ?? value]);
  const [least, most] = [Math.min(0, ...numbers), Math.max(1, ...numbers)];
  const share = (value: number) => `${((100 * (value - least)) / (most - least)).toFixed(1)}%`;
  return html`<ul class="ways">
    ${ways.map(
      ({ name, value, low, high, verdict }) =>
        html`<li>
          <span class="way-name">${name}</span> <strong>${dollars(value)}</strong>
          <span class="range">
            ${low === null || high === null ? nothing : `${dollars(low)} to ${dollars(high)}`}${
              verdict ? ` · ${/^\d+$/.test(verdict) ? `rank ${verdict}` : verdict.toLowerCase()}` : ""
            }
          </span>
          <span class="bar" aria-hidden="true">
            <span
              class="bar-range"
              style=${styleMap({ left: share(low ?? value), right: `calc(100% - ${share(high ?? value)})` })}
            ></span>
            <span class="bar-value" style=${styleMap({ left: share(value) })}></span>
          </span>
        </li>`,
    )}
  </ul>`;
}

const dollars = (value: number) => `${value < 0 ? "-" : ""}$${figure(Math.abs(value))}`;
