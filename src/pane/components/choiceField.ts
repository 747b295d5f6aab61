import { html, nothing } from "lit";

export interface Option {
  readonly id: string;
  readonly title: string;
}

export interface ChoiceFieldOptions {
  readonly id: string;
  readonly label: string;
  readonly options: readonly Option[];
  readonly value: string;
  readonly onChoose: (id: string) => void;
  readonly hint?: string;
}

/** A labelled menu. Knows nothing of cruises or sheets: it is given options and reports the id of one. */
export const choiceField = ({ id, label, options, value, onChoose, hint }: ChoiceFieldOptions) =>
  html`<div class="field">
    <label for=${id}>${label}</label>
    <select
      id=${id}
      aria-describedby=${hint ? `${id}-hint` : nothing}
      @change=${(event: Event) => onChoose((event.target as HTMLSelectElement).value)}
    >
      ${options.map((option) => html`<option value=${option.id} ?selected=${option.id === value}>${option.title}</option>`)}
    </select>
    ${hint ? html`<span class="hint" id="${id}-hint">${hint}</span>` : nothing}
  </div>`;
