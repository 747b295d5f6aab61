import { html, nothing } from "lit";
import { allRules } from "../../core/log/ruleSelections";
import { RULES_SHEET } from "../../workbook/sheets/rules";
import { looksOf, ruleChart, ruleFinding } from "../charts/ruleChart";
import { actionButton } from "../components/actionButton";
import { chartFigure } from "../components/chartFigure";
import { checkField } from "../components/checkField";
import { dataTable } from "../components/dataTable";
import { textField } from "../components/textField";
import { figure } from "../figures";
import type { Pane } from "../pane";
import { diameters, rulesByDiameter } from "../rules/rulesByDiameter";
import { cautionOn } from "./cautionOn";

/** Lengths that the rules are set side by side at. [ft] */
const SHORTEST = 4;
const LONGEST = 40;

/** Board feet by diameter under the rules that are ticked, as a chart and as a table. */
export function rulesView(pane: Pane) {
  const { rules, job } = pane.state;
  const length = Number(rules.length);
  const sound = rules.length.trim() !== "" && length >= SHORTEST && length <= LONGEST;
  const lines = sound ? rulesByDiameter(length, rules.shown) : [];
  const set = (change: Partial<typeof rules>) => pane.set({ rules: { ...pane.state.rules, ...change } });
  const tick = (id: string) => {
    const { shown } = pane.state.rules;
    set({ shown: shown.includes(id) ? shown.filter((one) => one !== id) : [...shown, id] });
  };
  return html`
    ${textField({
      id: "rules-length",
      label: "Length of the log",
      unit: "ft",
      numeric: true,
      value: rules.length,
      onInput: (typed) => set({ length: typed }),
      problem: sound ? undefined : `Type a length from ${SHORTEST} to ${LONGEST} ft.`,
    })}
    ${
      lines.length === 0
        ? html`<p class="hint">${sound ? "Tick one rule or more." : nothing}</p>`
        : chartFigure({
            finding: ruleFinding({ lines, length }),
            data: { lines, length },
            draw: ruleChart,
            table: dataTable(
              `Board feet in a log of ${length} ft`,
              ["Diameter inside bark, in", ...lines.map(({ title }) => title)],
              diameters.map((diameter, i) => [
                String(diameter),
                ...lines.map(({ volumes }) => {
                  const volume = volumes[i];
                  return typeof volume === "number" ? figure(volume) : "no value";
                }),
              ]),
            ),
          })
    }
    <fieldset class="checks">
      <legend>Rules</legend>
      ${allRules.rules.map(({ id, title }, place) =>
        checkField({
          id: `rule-${id}`,
          label: title,
          checked: rules.shown.includes(id),
          onChange: () => tick(id),
          line: looksOf(place),
        }),
      )}
    </fieldset>
    <p class="hint">Whole inches, rounded as each rule's printed tables are. Rules known from memory say so.</p>
    ${
      job === undefined || job === "none"
        ? nothing
        : actionButton({
            label: "Go to Rules",
            onPress: () =>
              void pane.run("Going to the sheet", () => pane.host.select({ sheet: RULES_SHEET, at: "A1" })),
          })
    }
    ${cautionOn(pane, "Estimate")}
  `;
}
