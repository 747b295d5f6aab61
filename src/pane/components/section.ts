import { html, type TemplateResult } from "lit";

/** A part of a view under its own heading. */
export const section = (title: string, content: TemplateResult) =>
  html`<section>
    <h2>${title}</h2>
    ${content}
  </section>`;
