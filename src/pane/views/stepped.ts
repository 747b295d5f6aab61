import { html, type TemplateResult } from "lit";
import { actionButton } from "../components/actionButton";
import type { Pane } from "../pane";

export interface SteppedOptions {
  readonly pane: Pane;
  readonly id: string;
  /** What the steps are, for a screen reader. */
  readonly label: string;
  /** The step that is shown, counted from 0. */
  readonly at: number;
  readonly count: number;
  /** What one step is called on the buttons. */
  readonly one: string;
  readonly go: (to: number) => void;
  readonly drawing: TemplateResult;
  /** The step in words. */
  readonly said: string;
}

/** A drawing with its steps, gone through by buttons or by the arrow keys, each told in words. */
export function stepped({ pane, id, label, at, count, one, go, drawing, said }: SteppedOptions) {
  const last = count - 1;
  const press = (to: number) => {
    go(to);
    if (to <= 0 || to >= last) pane.focus(id); // the button goes out of use under the focus
  };
  const onKey = (event: KeyboardEvent) => {
    const to = targets(at, last)[event.key];
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    go(Math.max(0, Math.min(last, to)));
  };
  return html`<div class="cuts" id=${id} role="group" tabindex="0" aria-label=${label} @keydown=${onKey}>
    ${drawing}
    <p class="cut-said" aria-live="polite"><strong>${at + 1} of ${count}.</strong> ${said}</p>
    <div class="actions">
      ${actionButton({ label: "Previous", name: `Previous ${one}`, disabled: at === 0, onPress: () => press(at - 1) })}
      ${actionButton({ label: "Next", name: `Next ${one}`, disabled: at === last, onPress: () => press(at + 1) })}
    </div>
    <p class="hint">The arrow keys go through them too, once this part has the focus.</p>
  </div>`;
}

/** Where a key leads from a step. */
const targets = (at: number, last: number): Readonly<Record<string, number>> => ({
  ArrowRight: at + 1,
  ArrowDown: at + 1,
  ArrowLeft: at - 1,
  ArrowUp: at - 1,
  Home: 0,
  End: last,
});
