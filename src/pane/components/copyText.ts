import { html } from "lit";
import { actionButton } from "./actionButton";
import { saveText, type TextFile } from "./saveText";

export interface CopyTextOptions {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  /** What the button says, such as "Copy as CSV text". */
  readonly button: string;
  /** The file that the text may be saved as. */
  readonly file: TextFile;
  /** Told when the text is on the clipboard or handed over as a file, or how to take it by hand. */
  readonly say: (sentence: string) => void;
}

const ROWS = 6;

/**
 * A text to take elsewhere: shown, copied by a button, or saved as a file where the spreadsheet lets a pane do so. Where
 * the pane may not write to the clipboard, the text is selected so that Ctrl+C does it.
 */
export const copyText = ({ id, label, text, button, file, say }: CopyTextOptions) =>
  html`<div class="field">
      <label for=${id}>${label}</label>
      <textarea id=${id} class="copy-text" rows=${ROWS} readonly spellcheck="false" .value=${text}></textarea>
    </div>
    <div class="actions">
      ${actionButton({ label: button, onPress: () => void copy(id, text, say) })}
      ${actionButton({ label: "Save as a file", name: `Save as a file: ${file.fileName}`, onPress: () => save(text, file, say) })}
    </div>`;

function save(text: string, file: TextFile, say: (sentence: string) => void): void {
  saveText(text, file);
  say(
    `${file.fileName} is handed over to be saved. If no file comes, this spreadsheet lets no pane save one: copy the text.`,
  );
}

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
