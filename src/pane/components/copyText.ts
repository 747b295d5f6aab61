import { html } from "lit";
import { actionButton } from "./actionButton";

export interface CopyTextOptions {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  /** What the button says, such as "Copy as CSV text". */
  readonly button: string;
  /** Told when the text is on the clipboard, or how to put it there by hand. */
  readonly say: (sentence: string) => void;
}

const ROWS = 6;

/**
 * A text to take elsewhere: shown, and copied by a button. Where the pane may not write to the clipboard, the text is
 * selected so that Ctrl+C does it; a download would not work in every spreadsheet.
 */
export const copyText = ({ id, label, text, button, say }: CopyTextOptions) =>
  html`<div class="field">
      <label for=${id}>${label}</label>
      <textarea id=${id} class="copy-text" rows=${ROWS} readonly spellcheck="false" .value=${text}></textarea>
    </div>
    <div class="actions">${actionButton({ label: button, onPress: () => void copy(id, text, say) })}</div>`;

async function copy(id: string, text: string, say: (sentence: string) => void): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    say("Copied. Paste it where it is wanted.");
  } catch {
    const box = document.getElementById(id);
    if (!(box instanceof HTMLTextAreaElement)) return;
    box.focus();
    box.select();
    say("The text is selected: press Ctrl+C, or Command+C on a Mac, to copy it.");
  }
}
