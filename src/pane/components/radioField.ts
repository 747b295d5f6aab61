import { html } from "lit";
import { live } from "lit/directives/live.js";
import type { Option } from "./choiceField";

export interface RadioFieldOptions {
  readonly name: string;
  readonly label: string;
  readonly options: readonly Option[];
  readonly value: string;
  readonly onChoose: (id: string) => void;
}

/** A few options of which one holds, all in sight. */
export const radioField = ({ name, label, options, value, onChoose }: RadioFieldOptions) =>
  html`<fieldset class="radios">
    <legend>${label}</legend>
    ${options.map(
      (option) =>
        html`<label class="radio"
          ><input
            type="radio"
            name=${name}
            value=${option.id}
            .checked=${live(option.id === value)}
            @change=${() => onChoose(option.id)}
          />${option.title}</label
        >`,
    )}
  </fieldset>`;
