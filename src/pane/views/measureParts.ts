import { html } from "lit";
import { textField } from "../components/textField";
import type { Measured } from "../measure/measured";
import type { MeasureForm } from "../measure/measureState";
import type { Pane } from "../pane";

/** What a calculation comes to, why it comes to nothing, or that its boxes are still to be filled. */
export function answer(found: Measured, said: (value: number) => string) {
  const words =
    found.kind === "figure"
      ? html`<strong>${said(found.value)}</strong>`
      : found.kind === "problem"
        ? found.because
        : "Fill in the boxes above.";
  return html`<p class="answer" role="status">${words}</p>`;
}

type Box = Exclude<keyof MeasureForm, "what" | "sighted" | "scale" | "species">;

/** A box for one reading. */
export const box = (pane: Pane, field: Box, label: string, unit = "", value = pane.state.measure[field]) =>
  textField({
    id: `measure-${field}`,
    label,
    ...(unit !== "" && { unit }),
    numeric: true,
    value,
    onInput: (typed) => setMeasure(pane, { [field]: typed }),
  });

export const setMeasure = (pane: Pane, change: Partial<MeasureForm>) =>
  pane.set({ measure: { ...pane.state.measure, ...change } });
