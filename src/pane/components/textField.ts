import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";

export interface TextFieldOptions {
  readonly id: string;
  readonly label: string;
  /** Shown after the box, and part of its name. */
  readonly unit?: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly numeric?: boolean;
  readonly hint?: string;
  /** What is wrong with the value; shown beside the box and read with it. */
  readonly problem?: string | undefined;
}

/** A labelled box with its unit, its hint and its problem beside it. */
export function textField({ id, label, unit, value, onInput, numeric = false, hint, problem }: TextFieldOptions) {
  const described = [hint && `${id}-hint`, problem && `${id}-problem`].filter(Boolean).join(" ");
  return html`<div class="field ${numeric ? "field-number" : ""}">
    <label for=${id}>${label}</label>
    <span class="box">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        inputmode=${numeric ? "decimal" : nothing}
        .value=${live(value)}
        aria-invalid=${problem ? "true" : nothing}
        aria-describedby=${described || nothing}
        @input=${(event: Event) => onInput((event.target as HTMLInputElement).value)}
      />${unit ? html`<span class="unit">${unit}</span>` : nothing}
    </span>
    ${hint ? html`<span class="hint" id="${id}-hint">${hint}</span>` : nothing}
    ${problem ? html`<span class="problem" id="${id}-problem" role="alert">${problem}</span>` : nothing}
  </div>`;
}
