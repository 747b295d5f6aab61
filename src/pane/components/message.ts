import { html, nothing, type TemplateResult } from "lit";

export interface MessageOptions {
  readonly kind: "problem" | "warning" | "note" | "done";
  readonly text: string;
  readonly actions?: readonly TemplateResult[];
}

const mark = { problem: "Problem", warning: "Check", note: "Note", done: "Done" } as const;

/** A sentence that matters, marked in words as well as in colour, with what can be done about it. */
export const message = ({ kind, text, actions }: MessageOptions) =>
  html`<div class="message message-${kind}" role=${kind === "problem" ? "alert" : nothing}>
    <p><strong>${mark[kind]}:</strong> ${text}</p>
    ${actions?.length ? html`<div class="actions">${actions}</div>` : nothing}
  </div>`;
