import { html } from "lit";
import { textField } from "../components/textField";
import type { SawingAnswers } from "../job/readSawing";
import type { Pane } from "../pane";
import { equalBoardsOf, type EqualBoards, type EqualBoardsForm } from "../sawing/equalBoards";

/** Where the head is set for like boards off an opened face, worked out while it is typed; no log is asked for. */
export function sawEqualBoards(pane: Pane, sawing: SawingAnswers) {
  const { equalBoards: form } = pane.state;
  const { unit, kerf, mill } = sawing;
  const box = (field: keyof EqualBoardsForm, label: string, measured: string) =>
    textField({
      id: `equal-${field}`,
      label,
      ...(measured !== "" && { unit: measured }),
      // A box for decimals only has no bar for 12 7/16 on a phone.
      numeric: field === "boards",
      value: form[field],
      onInput: (typed) => pane.set({ equalBoards: { ...pane.state.equalBoards, [field]: typed } }),
    });
  return html`<details class="more">
    <summary>Saw a stack of equal boards</summary>
    <div class="stem-fields">
      ${box("start", "Blade above the bed at the opening cut", unit)}
      <div class="pair">${box("thickness", "Board as sawn", unit)} ${box("boards", "Boards", "")}</div>
      ${answer(equalBoardsOf(form, sawing))}
      <p class="hint">
        Kerf ${kerf === null ? "not given" : `${kerf} ${unit}`};
        ${
          mill.scaleStep === undefined
            ? "no scale step on Mill, so the head stops anywhere."
            : `marks of ${mill.scaleStep} ${unit}, and no board thinner than wanted.`
        }
      </p>
    </div>
  </details>`;
}

function answer(found: EqualBoards) {
  const said =
    found.kind === "settings"
      ? html`<strong>${found.boards}</strong>; left on the bed: ${found.onBed}.`
      : found.kind === "problem"
        ? found.because
        : "Fill in the boxes above.";
  return html`<p class="answer" role="status">${said}</p>
    ${
      found.kind === "settings"
        ? html`<ol class="cut-list" aria-label="Head reading of each cut">
            ${found.cuts.map((cut) => html`<li><strong>${cut}</strong></li>`)}
          </ol>`
        : ""
    }`;
}
