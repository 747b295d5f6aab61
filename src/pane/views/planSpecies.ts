import { html } from "lit";
import { live } from "lit/directives/live.js";
import type { Pane } from "../pane";
import { speciesLine, speciesList } from "../plan/speciesList";
import { proposeCode } from "../species/proposeCode";
import { speciesFinder } from "./speciesFinder";

/** The codes of the owner's species, one a line, and a way to find more. */
export function planSpecies(pane: Pane) {
  const { plan } = pane.state;
  const set = (species: string) => pane.set({ plan: { ...pane.state.plan, species } });
  return html`<details class="more">
    <summary>Species codes</summary>
    <div class="field">
      <label for="plan-species">One a line: code, name, inventory code if you know it</label>
      <textarea
        id="plan-species"
        rows="6"
        .value=${live(plan.species)}
        @input=${(event: Event) => set((event.target as HTMLTextAreaElement).value)}
      ></textarea>
    </div>
    ${speciesFinder(pane, {
      id: "plan-find",
      label: "Find one to add",
      onPick: ({ name, fia }) => {
        const line = speciesLine({ code: proposeCode(name, speciesList(plan.species)), name, fia });
        set([plan.species.trimEnd(), line].filter((one) => one !== "").join("\n"));
      },
    })}
  </details>`;
}
