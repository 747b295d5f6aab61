import { html } from "lit";
import { live } from "lit/directives/live.js";
import { suggestionList } from "../components/suggestionList";
import type { Pane } from "../pane";
import { finderFor } from "../species/finderState";
import { nationalSearch } from "../species/nationalSearch";
import { onSuggestionKey } from "../species/onSuggestionKey";
import type { FoundSpecies } from "../species/speciesSearch";
import { sayOfSuggestion } from "../species/suggestions";

const MOST = 8;
const LEAST_LETTERS = 2;

export interface SpeciesFinderOptions {
  readonly id: string;
  readonly label: string;
  readonly onPick: (species: FoundSpecies) => void;
}

/** A box that finds species of the national list as one types: by name, scientific name or inventory code. */
export function speciesFinder(pane: Pane, { id, label, onPick }: SpeciesFinderOptions) {
  const { sought } = pane.state;
  const finder = finderFor(pane.state.finder, sought);
  const asked = sought.trim().length >= LEAST_LETTERS && !finder.closed;
  const search = asked ? nationalSearch(pane) : undefined;
  const found = asked ? (search?.(sought, MOST) ?? []) : [];
  const list = `${id}-suggestions`;
  const active = Math.min(finder.active, found.length - 1);
  const suggesting = {
    options: found.map((species) => sayOfSuggestion({ kind: "national", species })),
    active,
    pick: (place: number) => {
      const picked = found[place];
      if (!picked) return;
      pane.set({ sought: "" });
      onPick(picked);
      pane.focus(id);
    },
    choose: (next: number) => pane.set({ finder: { ...finder, active: next } }),
    close: () => pane.set({ finder: { ...finder, closed: true } }),
  };
  return html`<div class="field" @keydown=${(event: KeyboardEvent) => onSuggestionKey(event, id, suggesting)}>
    <label for=${id}>${label}</label>
    <input
      id=${id}
      type="text"
      autocomplete="off"
      spellcheck="false"
      role="combobox"
      aria-autocomplete="list"
      aria-expanded=${String(found.length > 0)}
      aria-controls=${list}
      aria-activedescendant=${active >= 0 ? `${list}-${active}` : ""}
      aria-describedby="${id}-hint"
      .value=${live(sought)}
      @input=${(event: Event) => pane.set({ sought: (event.target as HTMLInputElement).value })}
    />
    ${suggestionList({ id: list, label, options: suggesting.options, active, onPick: suggesting.pick })}
    <span class="hint" id="${id}-hint" role="status"
      >${
        asked && search && found.length === 0
          ? `No species is called "${sought.trim()}", or anything like it.`
          : "By common name, scientific name or inventory code, like su ma, acer or 318."
      }</span
    >
  </div>`;
}
